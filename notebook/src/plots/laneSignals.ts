import type { Data } from 'plotly.js-dist-min';
import type { Lane } from './lane.js';
import { namesOnBars } from './namesOnBars.js';
import type { Palette } from './palette.js';
import { plain } from './plotly.js';

/** What the equipment would have signalled, as bars of their own in the lowest row. */
export function states(lane: Lane, pixels: number, colours: Palette): Data[] {
  const { signalled, window, zone } = lane;
  const perPixel = (window.to - window.from) / pixels;
  const last = Math.max(...(signalled ?? []).map(({ end }) => end));
  const inSight = (signalled ?? []).filter(({ start, end }) => start <= window.to && end >= window.from);
  if (inSight.length === 0) return [];
  const cut = inSight.map(({ state, start, end }) => {
    const from = Math.max(start, window.from);
    const long = Math.max(Math.min(end, window.to) - from, 3 * perPixel);
    const fits = (name: string): boolean => long / perPixel > 6.4 * name.length + 8;
    return { state, from, long, name: stateNames(state, end >= last).find(fits) ?? '' };
  });
  return [
    {
      type: 'bar',
      orientation: 'h',
      base: cut.map(({ from }) => zone.wall(from)),
      x: cut.map(({ long }) => long),
      y: cut.map(() => lane.rows - 1),
      width: 0.62,
      xaxis: 'x',
      yaxis: 'y2',
      marker: { color: cut.map(({ state }) => (state === 'fire' ? colours.warm : colours.soft)), line: { width: 0 } },
      hovertext: cut.map(({ state }) => `the equipment would have signalled ${state}`),
      hoverinfo: 'text',
      name: 'signalled',
    } as unknown as Data,
    ...namesOnBars(
      cut.map(({ from, name }) => ({ at: from, row: lane.rows - 1, name, colour: colours.paper })),
      perPixel,
      11,
      zone,
    ),
  ];
}

/** Entries of the panel's list as marks at the top of the line: each kind has a shape of its own. */
export function panel({ events, window, zone }: Lane, range: readonly [number, number], colours: Palette): Data[] {
  const inSight = events.filter(({ at }) => at >= window.from && at <= window.to);
  if (inSight.length === 0) return [];
  return [
    {
      type: 'scatter',
      mode: 'markers',
      x: inSight.map(({ at }) => zone.wall(at)),
      y: inSight.map(() => range[1] - 0.05 * (range[1] - range[0])),
      marker: {
        symbol: inSight.map(({ what }) => shapes[what.toLowerCase()] ?? 'x-thin-open'),
        size: 8,
        color: colours.warm,
        line: { color: colours.warm, width: 1.3 },
      },
      hovertext: inSight.map(({ what, words }) => plain(`panel: ${what}. ${words}`.slice(0, 160))),
      hoverinfo: 'text',
      name: 'panel',
    } as unknown as Data,
  ];
}

/** Shapes of what a panel signals; other words are a cross. */
const shapes: Readonly<Record<string, string>> = { fire: 'triangle-down', fault: 'diamond-open', reset: 'circle-open' };

/** Names of a state, the longest first. A fire that lasts to the end was never reset, as far as is known. */
const stateNames = (state: 'fire' | 'fault', last: boolean): string[] =>
  state === 'fire' && last ? ['fire, held to the end: the site file names no reset', 'fire, held', 'fire'] : [state];
