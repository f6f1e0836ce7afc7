import { settingsOf } from '../tradeOff/frontier.js';
import { limitsBroken } from '../tradeOff/standardLimits.js';
import type { TradeOff } from '../tradeOff/tradeOff.js';
import { drawing, element, text } from './svg.js';

/*
 *      s |  x                    every setting a dot: time to alarm of the slowest fire against nuisance
 *        |  | o . .              o  on the frontier, with its band; joined
 *        |    o-.- - o  +        x  outside a limit of a standard
 *        |____________________   +  the current setting
 *         0  1  10  100 a year
 */

const margin = { left: 64, right: 20, top: 20, bottom: 64 };
const height = 420;

/** Where a yearly count stands: zero has a place, and each power of ten the same room. */
const stretched = (perYear: number): number => Math.log10(1 + 10 * perYear);

const ticks = [0, 1, 10, 100, 1000, 10_000];

/**
 * Time to alarm against nuisance, all settings, with the frontier, its band, the current setting and what lies outside
 * the limits of standards.
 *
 * @param tradeOff of one beam, with a log
 * @param width of the drawing [pixels]
 * @param id before every id in it
 * @returns SVG; without a log, or where no setting finds the fires, a drawing that says so
 */
export function frontierPlot(tradeOff: TradeOff, width = 760, id = 'frontier'): string {
  const settings = settingsOf(tradeOff);
  const title = `Beam ${tradeOff.beam}: time to alarm against nuisance`;
  if (settings.length === 0) {
    const words = 'No setting has both costs: a log, and fires that are found while they are watched, are needed.';
    return drawing({ width, height: 60, id, title, description: words }, text(words, 16, 34));
  }
  const most = Math.max(...settings.map(({ perYear }) => perYear), 1);
  const slowest = Math.max(...settings.map(({ seconds }) => seconds), 1);
  const inside = { width: width - margin.left - margin.right, height: height - margin.top - margin.bottom };
  const x = (perYear: number): number => margin.left + (stretched(perYear) / stretched(most)) * inside.width;
  const y = (seconds: number): number =>
    margin.top + inside.height * (1 - Math.min(Math.max(seconds, 0), slowest) / slowest);
  const dots = settings.map((each) =>
    mark(x(each.perYear), y(each.seconds), limitsBroken(each, tradeOff.limits).length === 0),
  );
  const line = tradeOff.frontier.map(
    (each, i) => `${i === 0 ? 'M' : 'L'}${x(each.perYear).toFixed(2)} ${y(each.seconds).toFixed(2)}`,
  );
  const { threshold, delay } = tradeOff.current;
  const current = settings.find((each) => each.threshold === threshold && each.delay === delay);
  const left = current !== undefined && x(current.perYear) < width / 2;
  const best = tradeOff.frontier.map((each) => `${each.threshold} % and ${each.delay} s`).join('; ');
  return drawing(
    {
      width,
      height,
      id,
      title,
      description: `On the frontier: ${best}. The current setting is ${threshold} % and ${delay} s${current ? `: ${current.seconds} s, ${current.perYear.toFixed(2)} a year` : ', which is not on the grid'}.`,
    },
    element('path', {
      d: `M${margin.left} ${margin.top}V${margin.top + inside.height}H${width - margin.right}`,
      fill: 'none',
      stroke: 'currentColor',
    }),
    ...dots,
    element('path', { d: line.join(''), fill: 'none', stroke: 'currentColor', 'stroke-width': 1.5 }),
    ...tradeOff.frontier.flatMap((each) => [
      element('line', {
        x1: x(each.perYear),
        x2: x(each.perYear),
        y1: y(each.early),
        y2: y(each.late),
        stroke: 'currentColor',
        'stroke-width': 1.5,
      }),
      element('circle', { cx: x(each.perYear), cy: y(each.seconds), r: 4.5, fill: 'currentColor' }),
    ]),
    ...(current === undefined
      ? []
      : [
          element('path', {
            d: `M${(x(current.perYear) - 9).toFixed(2)} ${y(current.seconds).toFixed(2)}h18m-9 -9v18`,
            stroke: 'currentColor',
            'stroke-width': 2.5,
          }),
          text(`now: ${threshold} %, ${delay} s`, x(current.perYear) + (left ? 10 : -12), y(current.seconds) - 8, {
            'font-weight': 600,
            'text-anchor': left ? 'start' : 'end',
          }),
        ]),
    ...ticks
      .filter((tick) => tick <= most)
      .map((tick) => text(String(tick), x(tick), margin.top + inside.height + 18, { 'text-anchor': 'middle' })),
    text('nuisance alarms a year', margin.left + inside.width / 2, height - 26, { 'text-anchor': 'middle' }),
    ...[0, 0.25, 0.5, 0.75, 1].map((share) =>
      text(`${Math.round(share * slowest)} s`, margin.left - 8, y(share * slowest) + 4, { 'text-anchor': 'end' }),
    ),
    text(
      'Dots: settings; filled: no other beats them in both; bars: band; x: outside a limit of a standard.',
      margin.left,
      height - 6,
    ),
  );
}

const mark = (x: number, y: number, inside: boolean): string =>
  inside
    ? element('circle', { cx: x, cy: y, r: 2.5, fill: 'none', stroke: 'currentColor', 'stroke-opacity': 0.5 })
    : element('path', {
        d: `M${(x - 2.5).toFixed(2)} ${(y - 2.5).toFixed(2)}l5 5m0 -5l-5 5`,
        stroke: 'currentColor',
        'stroke-opacity': 0.4,
      });
