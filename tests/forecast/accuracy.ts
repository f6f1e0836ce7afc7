import { forecastMargin } from '../../packages/beamkeep/src/forecast/index.js';
import { median } from '../../packages/beamkeep/src/statistics/index.js';
import { type DirtSeries, dirtSeries, type Kind } from './dirtSeries.js';

const dayMs = 86_400_000;

/** How good the forecasts of one kind of dirt are. */
export interface Accuracy {
  /** Series whose day comes. */
  readonly n: number;
  /** Median of |median - true day| as a share of the time left. */
  readonly error: number;
  /** The same of a straight line through the losses. */
  readonly lineError: number;
  /** Days between low and high, of those forecast. */
  readonly inside: number;
  readonly forecast: number;
  /** Series whose day never comes, and how many of them were given one. */
  readonly never: number;
  readonly needless: number;
}

/** Forecasts `count` series of a kind and compares with what comes. */
export function accuracy(kind: Kind, count: number): Accuracy {
  const errors: number[] = [];
  const lineErrors: number[] = [];
  const tally = { n: 0, inside: 0, forecast: 0, never: 0, needless: 0 };
  for (let seed = 1; seed <= count; seed++) {
    const series = dirtSeries(kind, seed);
    const { time, loss, alarmThreshold, reached, end } = series;
    const said = forecastMargin({
      time,
      loss,
      breaks: [],
      dailyLow: 0,
      beam: { alarmThreshold, compensation: 'none' },
    });
    if (reached === undefined) {
      tally.never++;
      if (said) tally.needless++;
      continue;
    }
    tally.n++;
    lineErrors.push(Math.abs(lineDay(series) - reached) / (reached - end));
    if (!said) continue;
    tally.forecast++;
    errors.push(Math.abs(said.median / dayMs - reached) / (reached - end));
    const day = Math.floor(reached) * dayMs; // days are told as dates
    if (Math.floor(said.low / dayMs) * dayMs <= day && (said.high === null || day <= said.high)) tally.inside++;
  }
  return { ...tally, error: median(errors), lineError: median(lineErrors) };
}

/** Day on which a straight line of least squares reaches the margin. */
function lineDay({ time, loss, alarmThreshold }: DirtSeries): number {
  const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [middle, level] = [mean(time), mean(loss)];
  let [products, squares] = [0, 0];
  for (const [row, instant] of time.entries()) {
    products += (instant - middle) * ((loss[row] as number) - level);
    squares += (instant - middle) ** 2;
  }
  const margin = -10 * Math.log10(1 - alarmThreshold / 100);
  return (middle + ((margin - level) * squares) / products) / dayMs;
}
