import { severities } from 'beamkeep/diagnosis';
import type { Data } from 'plotly.js-dist-min';
import type { NumberedFinding, Window } from '../bench/reading.js';
import type { SiteZone } from '../bench/siteZone.js';
import { causeOnBar } from '../words/causes.js';
import { crowdNumbers } from './crowdNumbers.js';
import type { Lane } from './lane.js';
import { namesOnBars } from './namesOnBars.js';
import type { Palette } from './palette.js';
import { plain } from './plotly.js';

/*
 * The findings of a lane as named bars above its line. Severity is told by the filling of a bar (act: solid, watch:
 * hatched, note: open), not by a colour.
 */

/** Bars of the findings that are in sight, cut to the window. */
export function bars({ strips, window, zone, chosen }: Lane, pixels: number, colours: Palette): Data[] {
  const perPixel = (window.to - window.from) / pixels;
  const cut = strips.map(({ finding, row, named, before }): Bar => {
    const start = Math.max(finding.start, window.from);
    const long = Math.max(Math.min(finding.end, window.to) - start, 5 * perPixel);
    const name = nameOnBar(finding);
    const bar = { finding, row, start, long };
    if (!named) return { ...bar, name: '', stands: 'within' };
    if (long / perPixel > name.length * 6.6 + 8) return { ...bar, name, stands: 'within' };
    if (before) return { ...bar, name, stands: 'before' };
    return { ...bar, name: nameAfter(name, start, long, perPixel, window), stands: 'after' };
  });
  const handles = cut
    .filter(({ name, stands }) => name !== '' && stands !== 'within')
    .map((bar) => handle(bar, perPixel));
  const drawn = severities
    .map((severity) => cut.filter(({ finding }) => finding.severity === severity))
    .filter((same) => same.length > 0)
    .map((same) => barsAlike(same, zone, chosen, colours));
  const inkOn = ({ severity }: NumberedFinding): string => (severity === 'act' ? colours.paper : colours.ink);
  const names = cut.map(({ finding, row, start, long, name, stands }) => ({
    at: stands === 'after' ? start + long : start,
    ends: stands === 'before',
    row,
    name,
    colour: stands === 'within' ? inkOn(finding) : colours.ink,
  }));
  const crowd = cut
    .filter((_, at) => strips[at]?.named === false)
    .map(({ finding, row, start, long }) => ({ finding, row, number: finding.number, start, end: start + long }));
  const numbers = crowdNumbers(crowd, window, perPixel).map(({ within, ...mark }) => ({
    ...mark,
    row: crowd[0]?.row ?? 0,
    colour: within ? inkOn(within.finding) : colours.ink,
  }));
  return [
    ...(handles.length > 0 ? [unseenBars(handles, zone)] : []),
    ...drawn,
    ...namesOnBars([...names, ...numbers], perPixel, 12, zone),
  ];
}

/** A bar cut to the window, and its name. */
interface Bar {
  readonly finding: NumberedFinding;
  readonly row: number;
  readonly start: number;
  /** Length on the plot [ms]. */
  readonly long: number;
  readonly name: string;
  /** Where the name stands: in the bar, or beside it. */
  readonly stands: 'within' | 'before' | 'after';
}

/** A bar and the name beside it: a bar of few pixels is hard to hit, its name is not. */
function handle(bar: Bar, perPixel: number): Bar {
  const name = (bar.name.length * 6.6 + 6) * perPixel;
  return { ...bar, start: bar.stands === 'before' ? bar.start - name : bar.start, long: bar.long + name };
}

/** Bars that are not seen, to be pointed at. */
function unseenBars(bars: readonly Bar[], zone: SiteZone): Data {
  return {
    ...placed(bars, zone),
    marker: { opacity: 0 },
    name: 'handles',
  } as unknown as Data;
}

/** Where bars lie, and what they say when they are pointed at. */
const placed = (bars: readonly Bar[], zone: SiteZone): object => ({
  type: 'bar',
  orientation: 'h',
  base: bars.map(({ start }) => zone.wall(start)),
  x: bars.map(({ long }) => long),
  y: bars.map(({ row }) => row),
  width: 0.8,
  xaxis: 'x',
  yaxis: 'y2',
  customdata: bars.map(({ finding }) => finding.number),
  hovertext: bars.map(({ finding }) => plain(`${finding.number} ${finding.severity}: ${finding.cause}`)),
  hoverinfo: 'text',
});

/** Bars of one severity, filled alike. */
function barsAlike(same: readonly Bar[], zone: SiteZone, chosen: number | null, colours: Palette): Data {
  const severity = same[0]?.finding.severity ?? 'note';
  const solid = severity === 'act';
  return {
    ...placed(same, zone),
    marker: {
      color: solid ? colours.deep : colours.paper,
      line: {
        color: same.map(({ finding }) => (finding.number === chosen ? colours.warm : colours.deep)),
        width: same.map(({ finding }) => (finding.number === chosen ? 3 : 1)),
      },
      ...(severity === 'watch'
        ? {
            pattern: {
              shape: '/',
              bgcolor: colours.paper,
              fgcolor: colours.hatch,
              fgopacity: 1,
              size: 7,
              solidity: 0.22,
            },
          }
        : {}),
    },
    name: severity,
  } as unknown as Data;
}

export const nameOnBar = ({ number, cause }: NumberedFinding): string => `${number} ${causeOnBar(cause)}`;

/** A name after its bar is its number where the edge of the plot would cut it. */
function nameAfter(name: string, start: number, long: number, perPixel: number, window: Window): string {
  const room = (window.to - start - long) / perPixel;
  if (room > name.length * 6.6 + 6) return name;
  return room > 20 ? (name.split(' ')[0] ?? '') : '';
}
