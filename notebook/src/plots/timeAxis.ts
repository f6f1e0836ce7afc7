import type { Layout } from 'plotly.js-dist-min';
import type { Window } from '../bench/reading.js';
import type { SiteZone } from '../bench/siteZone.js';
import type { Palette } from './palette.js';
import { plain } from './plotly.js';

/** Height of the time labels under the lowest lane [px]. */
export const axisHeight = 44;

/** Room left and right of the line [px]: the same in every lane, so that the lanes stand in line. */
export const margins = (width: number): { l: number; r: number } => ({
  l: width < 520 ? 40 : 56,
  r: width < 520 ? 8 : 14,
});

/** Dates as day and month, whatever the length of the stretch. */
export const tickFormats: NonNullable<NonNullable<Layout['xaxis']>['tickformatstops']> = [
  { dtickrange: [null, 1000], value: '%H:%M:%S.%L\n%-d %b' },
  { dtickrange: [1000, 60_000], value: '%H:%M:%S\n%-d %b %Y' },
  { dtickrange: [60_000, 86_400_000], value: '%H:%M\n%-d %b %Y' },
  { dtickrange: [86_400_000, 'M1'], value: '%-d %b\n%Y' },
  { dtickrange: ['M1', 'M12'], value: '%b\n%Y' },
  { dtickrange: ['M12', null], value: '%Y' },
];

/** The time axis, the same in every plot of a log. */
export function timeAxis(
  window: Window,
  zone: SiteZone,
  colours: Palette,
  named: boolean,
  pixels: number,
): NonNullable<Layout['xaxis']> {
  const changes = zone.changes(window.from, window.to);
  const change = changes ? '; the clocks change in this stretch' : '';
  // Where it is narrow, the whole sentence would stand on the year below the first date.
  const title = pixels < 520 ? `${zone.name}${changes ? '; clocks change' : ''}` : `time in ${zone.name}${change}`;
  return {
    type: 'date',
    range: [zone.wall(window.from), zone.wall(window.to)],
    gridcolor: colours.rule,
    linecolor: colours.soft,
    showline: true,
    ticks: 'outside',
    ticklen: named ? 4 : 0,
    tickcolor: colours.soft,
    showticklabels: named,
    nticks: pixels < 520 ? 4 : 9,
    tickformatstops: tickFormats,
    title: { text: named ? plain(title) : '', font: { size: 11 }, standoff: 6 },
    hoverformat: '%d %b %Y, %H:%M:%S',
  } as NonNullable<Layout['xaxis']>;
}
