/*
 * Drawings as text: no script, no style sheet, no link, every text escaped. Ink is `currentColor`, so a drawing follows
 * the page it stands on, light, dark or printed.
 */

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe inside SVG; control characters, which XML cannot hold, are left out. */
export const escaped = (text: string): string =>
  [...text]
    .filter((character) => character >= ' ' || character === '\n' || character === '\t')
    .join('')
    .replace(/[&<>"']/g, (character) => entities[character] ?? character);

/** Attributes of an element; numbers are written with three decimals at most. */
export type Attributes = Readonly<Record<string, string | number>>;

const written = (value: string | number): string =>
  typeof value === 'number' ? String(Number(value.toFixed(3))) : escaped(value);

/** An element; `inner` is SVG already. */
export function element(name: string, attributes: Attributes, ...inner: readonly string[]): string {
  const list = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${written(value)}"`)
    .join('');
  return inner.length === 0 ? `<${name}${list}/>` : `<${name}${list}>${inner.join('')}</${name}>`;
}

/** A line of text. */
export const text = (words: string, x: number, y: number, attributes: Attributes = {}): string =>
  element('text', { x, y, 'font-size': 12, fill: 'currentColor', ...attributes }, escaped(words));

/** A whole drawing with its title and a description that says in words what it shows. */
export function drawing(
  {
    width,
    height,
    id,
    title,
    description,
  }: {
    readonly width: number;
    readonly height: number;
    /** Before every id in it, so that two drawings can stand on one page. */
    readonly id: string;
    readonly title: string;
    readonly description: string;
  },
  ...inner: readonly string[]
): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${written(width)} ${written(height)}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-description`,
      'font-family': 'system-ui, sans-serif',
    },
    element('title', { id: `${id}-title` }, escaped(title)),
    element('desc', { id: `${id}-description` }, escaped(description)),
    ...inner,
  );
}
