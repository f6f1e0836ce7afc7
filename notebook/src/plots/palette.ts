/*
 * The colours of the plots are those of the page: they are read from the style sheet, for the light and the dark
 * theme alike, so that a report can be drawn light while the page is dark.
 */

const names = ['paper', 'panel', 'ink', 'soft', 'rule', 'accent', 'band', 'hatch', 'warm', 'deep'] as const;

export type Scheme = 'light' | 'dark';

/** Colours of one theme, as the plotting library takes them. */
export type Palette = Readonly<Record<(typeof names)[number], string>>;

/** The colours of a theme. */
export function palette(scheme: Scheme): Palette {
  const probe = document.createElement('span');
  probe.style.colorScheme = scheme;
  document.body.append(probe);
  const colour = (name: string): string => {
    probe.style.color = `var(--${name})`;
    return getComputedStyle(probe).color;
  };
  const colours = Object.fromEntries(names.map((name) => [name, colour(name)])) as Palette;
  probe.remove();
  return colours;
}
