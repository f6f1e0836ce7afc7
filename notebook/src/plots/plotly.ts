import type { Config, Data, Layout } from 'plotly.js-dist-min';

/*
 * The plotting library: 4.8 MB that are fetched once the page stands. It knows ways of sending a chart to a server of
 * its makers: all are switched off here, in the one place where its settings are, and the page's policy forbids them.
 */

export type Plotly = typeof import('plotly.js-dist-min');

/** A picture to draw. */
export interface Figure {
  readonly data: Data[];
  readonly layout: Partial<Layout>;
}

/** One set of settings for every plot: buttons stand beside the plots as ordinary buttons, not on them. */
export const config: Partial<Config> = {
  displayModeBar: false,
  displaylogo: false,
  showSendToCloud: false,
  plotlyServerURL: '',
  showTips: false,
  doubleClick: false,
  scrollZoom: false,
  responsive: false,
};

let loading: Promise<Plotly> | undefined;
let loaded: Plotly | undefined;

/** The library, once it is there. */
export const plotlyAtHand = (): Plotly | undefined => loaded;

/** The library, fetched when it is first asked for. */
export function plotly(): Promise<Plotly> {
  loading ??= import('plotly.js-dist-min').then(async (module) => {
    const library = 'default' in module ? (module.default as Plotly) : module;
    await warmed(library);
    loaded = library;
    return library;
  });
  return loading;
}

/**
 * A browser compiles a library as it first runs, and the first plot would wait for all of it at once. Small pictures
 * that nobody sees call for it bit by bit, with pauses.
 */
async function warmed(library: Plotly): Promise<void> {
  const unseen = document.createElement('div');
  const layout: Partial<Layout> = { width: 300, height: 200 };
  const x = ['2027-01-01 00:00', '2027-01-02 00:00'];
  const line: Data = { x, y: [1, 2], mode: 'lines' };
  const bar = {
    ...{ type: 'bar', orientation: 'h', base: x, x: [1, 2], y: [0, 1], text: ['a', 'b'] },
    textposition: ['inside', 'outside'],
    marker: { pattern: { shape: '/' } },
  } as unknown as Data;
  const map = {
    type: 'heatmap',
    x,
    y: [1, 2],
    z: [
      [1, 2],
      [2, 1],
    ],
    colorbar: { title: { text: 'a', side: 'right' } },
  } as Data;
  const marks: Data = { x, y: [1, 2], mode: 'lines+markers', error_y: { type: 'data', array: [1, 1] } };
  const figures: Figure[] = [
    { data: [], layout },
    { data: [line], layout },
    { data: [line, bar], layout: { ...layout, xaxis: { type: 'date' } } },
    { data: [line, marks], layout: { ...layout, showlegend: true } },
    { data: [map], layout },
    {
      data: [line],
      layout: { ...layout, shapes: [{ type: 'line', x0: x[0], x1: x[1], y0: 1, y1: 2 }], annotations: [{ text: 'a' }] },
    },
  ];
  for (const { data, layout } of figures) await inTurn(() => library.react(unseen, data, layout, config));
  library.purge(unseen);
}

let last: Promise<unknown> = Promise.resolve();

/**
 * Draws after everything that was asked for before, with a pause in between in which the page answers: many plots at
 * once would otherwise hold it up together.
 */
export function inTurn<T>(draw: () => T | Promise<T>): Promise<T> {
  const turn = last.then(laidOut).then(draw);
  last = turn.catch(() => undefined);
  return turn;
}

/** How long a frame is waited for [ms]. */
const longestFrame = 200;

/**
 * Comes when the browser has laid out what changed on the page: the library measures its words, and would have to wait
 * for that in the middle of its own work. A page that nobody sees is not laid out: it does not wait, nor does one that
 * is hidden meanwhile wait for long.
 */
const laidOut = (): Promise<void> =>
  new Promise((resolve) => {
    const go = (): void => void setTimeout(resolve);
    if (document.hidden) return go();
    requestAnimationFrame(go);
    setTimeout(go, longestFrame);
  });

/** Text for a plot. The library reads a few tags in texts: what comes from a log or a site file is text, not tags. */
export const plain = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
