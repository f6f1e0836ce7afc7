import { useSignal } from '@preact/signals';
import type { PlotlyHTMLElement } from 'plotly.js-dist-min';
import { useEffect, useRef } from 'preact/hooks';
import { type Palette, palette } from './palette.js';
import { Paper } from './paper.js';
import type { PictureName } from './pictureFile.js';
import { config, type Figure, inTurn, type Plotly, plotly, plotlyAtHand } from './plotly.js';
import { SavePicture } from './SavePicture.js';
import { colours } from './scheme.js';
import { inSpareTime } from './spareTime.js';

/** Width of a plot in a report [px]: printed, it is fitted to the page, and its least words stand at 7 points. */
const reportWidth = 760;
/** Width of a plot saved by itself [px]. */
const fileWidth = 960;

export interface PlotProps {
  /** The picture at a width; a new function is a new picture. Undefined while what it shows is worked out. */
  readonly figure: ((width: number, colours: Palette) => Figure) | undefined;
  /** Whether what it shows could not be worked out: no figure will come. */
  readonly failed?: boolean;
  /** The same for a picture by itself, where what stands around it is missing: in a file, in a report, on paper. */
  readonly alone?: ((width: number, colours: Palette) => Figure) | undefined;
  /** Height [px], so that the page does not jump when the picture comes. */
  readonly height: number;
  /** One sentence that says what the picture shows, for whoever cannot see it. */
  readonly label: string;
  /** What a saved picture is called, from the wide to the narrow: the site, the cell, the beam. */
  readonly name: PictureName;
  /** The reader drew a stretch with the pointer: clock times at both ends. */
  readonly onZoom?: (from: string, to: string) => void;
  /** The reader clicked twice: the whole again. */
  readonly onWhole?: () => void;
  /** The reader clicked something that carries a number. */
  readonly onChoose?: (number: number) => void;
}

/** While the browser prints. */
let printing = false;

/** A plot on the page. */
interface OnPage {
  /** Draws it for paper, unless that is done. */
  prepare(): void;
  /** Puts what is drawn for paper in its place. */
  toPaper(): void;
  /** Puts what is drawn for the screen in its place again. */
  toScreen(): void;
  /** The light picture as SVG, to stand alone. */
  image(width: number): Promise<readonly [element: Element, svg: string] | undefined>;
}

const onPage = new Set<OnPage>();

/** Every plot on the page as a light picture (SVG), by its element of class `plot`. */
export async function plotImages(): Promise<ReadonlyMap<Element, string>> {
  const images = new Map<Element, string>();
  for (const plot of onPage) {
    const image = await inTurn(() => plot.image(reportWidth));
    if (image) images.set(...image);
  }
  return images;
}

/** Prints the sheet. Every plot is drawn for paper before, with pauses in which the page answers. */
export async function printSheet(): Promise<void> {
  for (const plot of onPage) await inTurn(() => plot.prepare());
  print();
}

// Whoever prints by the browser's own menu leaves no time: most plots have been drawn for paper by then.
addEventListener('beforeprint', () => {
  printing = true;
  for (const plot of onPage) plot.prepare();
  for (const plot of onPage) plot.toPaper();
});
addEventListener('afterprint', () => {
  printing = false;
  for (const plot of onPage) plot.toScreen();
});

/** A plot that follows its width, the theme and the printer. */
export function Plot({ figure, failed = false, alone = figure, height, label, name, ...handlers }: PlotProps) {
  const box = useRef<HTMLDivElement>(null);
  const width = useSignal(0);
  const library = useRef<Plotly>(undefined);
  const listening = useRef(handlers);
  listening.current = handlers;
  const saved = useRef(alone);
  saved.current = alone;
  // Read where it is needed: a plot that grows is the same plot, and keeps what listens to it.
  const tall = useRef(height);
  tall.current = height;
  const mine = useRef<OnPage>(undefined);

  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      if (!printing && entry) width.value = Math.round(entry.contentRect.width);
    });
    observer.observe(element);
    const paper = new Paper(element);
    const plot: OnPage = {
      prepare() {
        const lib = plotlyAtHand();
        if (lib && saved.current) paper.draw(lib, saved.current);
      },
      toPaper: () => paper.show(),
      toScreen: () => paper.hide(),
      async image(wide) {
        const frame = element.parentElement;
        const picture = saved.current;
        const lib = plotlyAtHand();
        if (!lib || !frame || !picture) return undefined;
        const { data, layout } = picture(wide, palette('light'));
        const size = { width: wide, height: layout.height ?? tall.current };
        const url = await lib.toImage({ data, layout, config }, { format: 'svg', ...size });
        return [frame, decodeURIComponent(url.slice(url.indexOf(',') + 1))];
      },
    };
    onPage.add(plot);
    mine.current = plot;
    return () => {
      onPage.delete(plot);
      observer.disconnect();
      paper.clear(plotlyAtHand());
      library.current?.purge(element);
      library.current = undefined;
    };
  }, [width]);

  const theme = colours.value;
  useEffect(() => {
    const wide = width.value;
    if (wide < 1 || !figure) return;
    let outdated = false;
    const draw = async (): Promise<void> => {
      const lib = await plotly();
      await inTurn(async () => {
        const element = box.current;
        if (outdated || !element) return;
        const { data, layout } = figure(wide, theme);
        await lib.react(element, data, layout, config);
        if (!library.current) listen(element as unknown as PlotlyHTMLElement, listening);
        library.current = lib;
      });
      if (!outdated) giveUp = inSpareTime(() => inTurn(() => mine.current?.prepare()));
    };
    let giveUp = (): void => {};
    void draw();
    return () => {
      outdated = true;
      giveUp();
    };
  }, [figure, width.value, theme, width]);

  return (
    <div class="plot-frame">
      <div class={figure ? 'plot' : 'plot plot-empty'} role="img" aria-label={label} aria-busy={!figure && !failed}>
        <div ref={box} style={{ height: `${height}px` }} />
      </div>
      {!figure && !failed && (
        <p class="coming" data-screen>
          On its way …
        </p>
      )}
      {!figure && (
        <p class={failed ? 'coming' : 'coming on-paper'}>{failed ? 'This could not be drawn.' : 'Not drawn yet.'}</p>
      )}
      <SavePicture name={name} picture={async () => (await inTurn(() => mine.current?.image(fileWidth)))?.[1]} />
    </div>
  );
}

type Listening = { readonly current: Pick<PlotProps, 'onZoom' | 'onWhole' | 'onChoose'> };

function listen(element: PlotlyHTMLElement, listening: Listening): void {
  element.on('plotly_relayout', (change) => {
    const { 'xaxis.range[0]': from, 'xaxis.range[1]': to } = change as Record<string, unknown>;
    if (typeof from === 'string' && typeof to === 'string') listening.current.onZoom?.(from, to);
  });
  element.on('plotly_doubleclick', () => {
    listening.current.onWhole?.();
    return false;
  });
  element.on('plotly_click', ({ points }) => {
    const number: unknown = points[0]?.customdata;
    if (typeof number === 'number') listening.current.onChoose?.(number);
  });
}
