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

/** The library, fetched when it is first asked for. */
export function plotly(): Promise<Plotly> {
  loading ??= import('plotly.js-dist-min').then((module) =>
    'default' in module ? (module.default as Plotly) : module,
  );
  return loading;
}

let last: Promise<unknown> = Promise.resolve();

/**
 * Draws after everything that was asked for before, with a pause in between in which the page answers: many plots at
 * once would otherwise hold it up together.
 */
export function inTurn<T>(draw: () => T | Promise<T>): Promise<T> {
  const turn = last.then(() => new Promise((resolve) => setTimeout(resolve))).then(draw);
  last = turn.catch(() => undefined);
  return turn;
}

/** Text for a plot. The library reads a few tags in texts: what comes from a log or a site file is text, not tags. */
export const plain = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
