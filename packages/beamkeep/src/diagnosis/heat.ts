import { type Channel, hour } from '../columns/index.js';
import { type MovementFit, movementFit } from '../optics/index.js';
import { mean, median, robustLeastSquares, rollingMedian } from '../statistics/index.js';
import { middle } from './cells.js';
import { cellOfStep, type Step } from './steps.js';
import type { CellParts } from './takeApart.js';
import type { View } from './view.js';

/*
 * The movement read from the structure's temperature. The loss of a moving aim is a quadratic of the temperature some
 * hours before (optics/movementFit has the formula). Its two coefficients are found from the days alone, each day about
 * its own middle, so that neither dirt nor a season takes part; but they hold for the season too, and tell how much of
 * a slow loss is only the roof getting warmer, unless the weeks show that the structure gives way to what stays for so
 * long. A knock changes the offset, so each stretch between knocks has its own.
 */

/** Lags of the structure behind the logged temperature that are tried [h]. */
const lags = [0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6];
/** Days that a stretch must have for a fit of its own. */
const leastDays = 4;
/** Share of the daily course that the temperature must explain for the season to be taken off by it. */
const trusted = 0.6;

export interface Heat {
  readonly lagHours: number;
  /** Share of the variance of the daily course that the fit explains, over all stretches. */
  readonly explained: number;
  /** The season's part of each cell's loss [dB], about its mean in the stretch; 0 where the fit is not to be trusted. */
  readonly season: Float64Array;
  /** Aim and movement over the last stretch, with limits. */
  readonly aim: MovementFit;
}

/** Reads the movement from the temperature; nothing without a temperature column or a daily cycle. */
export function heatOf(view: View, parts: CellParts): Heat | undefined {
  const best = bestLag(view, parts);
  if (best === undefined) return undefined;
  const { cells, course } = parts;
  const { perDay, proxy } = best;
  const knocks = parts.steps.filter((s) => s.loss > 0).map((s) => cellOfStep(cells, view.trace.time, s));
  const borders = [0, ...knocks, cells.length];
  const season = new Float64Array(cells.length);
  let aim: MovementFit | undefined;
  for (let k = 0; k + 1 < borders.length; k++) {
    const from = borders[k] as number;
    const to = borders[k + 1] as number;
    if (to - from < leastDays * perDay) continue;
    const fit = explainedBy(proxy, parts, from, to, perDay);
    if (fit === undefined) continue;
    const part = proxy.subarray(from, to).map((u) => fit.slope * u + fit.curvature * u * u);
    const days = runningMean(part, perDay);
    const middleOfAll = mean(days);
    if (fit.explained >= trusted && !givesWay(runningMean(course.subarray(from, to), perDay), days, perDay))
      season.set(
        days.map((v) => (Number.isNaN(v) ? 0 : v - middleOfAll)),
        from,
      );
    const own = course.subarray(from, to);
    const dirt = rollingMedian(
      own.map((v, i) => v - (part[i] as number)),
      perDay + 1,
    );
    aim = movementFit(
      own.map((v, i) => v - (dirt[i] as number)),
      proxy.slice(from, to),
      {
        block: perDay,
        leastSpread: parts.cellNoise / 2,
      },
    );
  }
  return aim === undefined ? undefined : { lagHours: best.lag, explained: best.explained, season, aim };
}

/**
 * Days of the means that show a week, days between two of them, share of the season under which the weeks do not follow
 * it, and standard errors by which they must miss the whole of it. Own choice.
 */
const [weekDays, apartDays, leastShare, errors] = [7, 14, 0.5, 2];

/**
 * Whether a structure that follows the heat of a day does not follow that of weeks, as joints that slip and supports that
 * creep let it: the loss of one week after another hardly changes as the days' fit says. Dirt, which grows alike from week
 * to week, takes no part.
 *
 * @param loss loss of each cell, a day's mean [dB]
 * @param season what the days' fit says of it [dB]
 */
function givesWay(loss: Float64Array, season: Float64Array, perDay: number): boolean {
  const ones = new Float64Array(Math.max(0, Math.floor(loss.length / perDay) - apartDays)).fill(1);
  const change = (daily: Float64Array): Float64Array => {
    const weekly = runningMean(daily, weekDays * perDay);
    const at = (day: number): number => weekly[day * perDay] as number;
    return ones.map((_, day) => at(day + apartDays) - at(day));
  };
  if (ones.length < weekDays + apartDays) return false;
  const { coefficients, covariance } = robustLeastSquares([ones, change(season)], change(loss));
  const share = coefficients[1] ?? Number.NaN;
  // Neighbours share most of their days: so many fewer tell anything of their own.
  const error = Math.sqrt((covariance[1]?.[1] ?? Number.NaN) * (weekDays + apartDays));
  return share < leastShare && share + errors * error < 1;
}

/** Time on either side of a change over which the temperature must account for it [ms], and share of it: own choice. */
const beside = 6 * hour;
const accounts = 0.5;

/**
 * Tells which changes at once are only the structure that warms or cools in a morning or under a front: most of the
 * change is gone when the movement that the temperature tells is taken off. None, where that is not to be trusted.
 */
export function movedByHeat(view: View, parts: CellParts): (step: Step) => boolean {
  const best = bestLag(view, parts);
  if (best === undefined || best.explained < trusted) return () => false;
  const { cells, course } = parts;
  const { slope, curvature, proxy } = best;
  const rest = course.map((v, c) => v - (slope + curvature * (proxy[c] as number)) * (proxy[c] as number));
  const reach = Math.max(2, Math.round(beside / cells.width));
  return (step) => {
    const at = cellOfStep(cells, view.trace.time, step);
    const left = median(rest.subarray(at, at + reach)) - median(rest.subarray(Math.max(0, at - reach), at));
    return left * Math.sign(step.loss) < (1 - accounts) * Math.abs(step.loss);
  };
}

/** The temperature so long before that explains most of the days' courses, and the quadratic of them all on it. */
function bestLag(view: View, parts: CellParts) {
  const channel = view.record.temperature;
  if (channel === undefined || channel.time.length < 20 || !parts.cycleFitted) return undefined;
  const perDay = Math.round((24 * hour) / parts.cells.width);
  let best: (Quadratic & { readonly lag: number; readonly proxy: Float64Array; readonly perDay: number }) | undefined;
  for (const lag of lags) {
    const proxy = atCells(channel, parts, lag * hour);
    const fit = explainedBy(proxy, parts, 0, parts.cells.length, perDay);
    if (fit !== undefined && fit.explained > (best?.explained ?? 0)) best = { ...fit, lag, proxy, perDay };
  }
  return best;
}

/** Loss by the temperature [dB/K, dB/K²], and the share of the variance that it explains. */
interface Quadratic {
  readonly slope: number;
  readonly curvature: number;
  readonly explained: number;
}

/** The quadratic of the days' courses on the proxy, each day about its own middle. */
function explainedBy(
  proxy: Float64Array,
  { course, cellNoise }: CellParts,
  from: number,
  to: number,
  perDay: number,
): Quadratic | undefined {
  const u = proxy.subarray(from, to);
  const own = course.subarray(from, to);
  const about = (values: Float64Array): Float64Array => {
    const days = runningMean(values, perDay);
    return values.map((v, i) => v - (days[i] as number));
  };
  const { coefficients, rSquared, n } = robustLeastSquares([about(u), about(u.map((v) => v * v))], about(own), {
    leastSpread: cellNoise,
  });
  const [slope = Number.NaN, curvature = Number.NaN] = coefficients;
  return n < perDay || Number.isNaN(slope) ? undefined : { slope, curvature, explained: rSquared };
}

/** The temperature at the middle of each cell, so long before. */
function atCells({ time, value }: Channel, { cells }: CellParts, lag: number): Float64Array {
  const out = new Float64Array(cells.length).fill(Number.NaN);
  let i = 0;
  for (let c = 0; c < cells.length; c++) {
    const at = middle(cells, c) - lag;
    while (i + 1 < time.length && (time[i + 1] as number) <= at) i++;
    const next = Math.min(i + 1, time.length - 1);
    const nearer = Math.abs((time[next] as number) - at) < Math.abs((time[i] as number) - at) ? next : i;
    if (Math.abs((time[nearer] as number) - at) <= 2 * hour) out[c] = value[nearer] as number;
  }
  return out;
}

/** Mean of the day about each value; missing values are left out. */
function runningMean(values: Float64Array, perDay: number): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  let n = 0;
  let from = 0;
  let to = 0;
  for (let c = 0; c < values.length; c++) {
    const a = Math.max(0, c - (perDay >> 1));
    const b = Math.min(values.length, c - (perDay >> 1) + perDay);
    for (; to < b; to++) {
      const v = values[to] as number;
      if (Number.isNaN(v)) continue;
      sum += v;
      n++;
    }
    for (; from < a; from++) {
      const v = values[from] as number;
      if (Number.isNaN(v)) continue;
      sum -= v;
      n--;
    }
    out[c] = n > 0 ? sum / n : Number.NaN;
  }
  return out;
}
