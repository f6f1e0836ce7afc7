import { forecastMargin } from '../../packages/beamkeep/src/forecast/index.js';
import { median } from '../../packages/beamkeep/src/statistics/index.js';
import type { Figure } from '../evaluation/score.js';
import { bootstrap, wilson } from '../evaluation/uncertainty.js';
import { type DirtSeries, dirtSeries, type GrowthLaw, type Kind } from './dirtSeries.js';

const dayMs = 86_400_000;

/** What became of one forecast of a day that comes. */
export interface Outcome {
  /** |straight line - true day| as a share of the time left. */
  readonly lineError: number;
  /** |median - true day| as a share of the time left; undefined where nothing was forecast. */
  readonly error: number | undefined;
  /** Whether the true date lies between those of low and high. */
  readonly inside: boolean;
}

/** Outcomes of many forecasts of one kind of dirt. */
export interface Outcomes {
  readonly comes: readonly Outcome[];
  /** Series whose day never comes, and how many of them were given one. */
  readonly never: number;
  readonly needless: number;
}

/** Forecasts `count` series of a kind, from seed `first` on, and compares with what comes. */
export function outcomes(kind: Kind, law: GrowthLaw, count: number, first = 1001): Outcomes {
  const comes: Outcome[] = [];
  const tally = { never: 0, needless: 0 };
  for (let seed = first; seed < first + count; seed++) {
    const series = dirtSeries(kind, law, seed);
    const { reached, end, alarmThreshold, ...seen } = series;
    const said = forecastMargin({ ...seen, beam: { alarmThreshold, compensation: 'none' } });
    if (reached === undefined) {
      tally.never++;
      if (said) tally.needless++;
      continue;
    }
    const date = (instant: number): number => Math.floor(instant / dayMs);
    comes.push({
      lineError: Math.abs(lineDay(series) - reached) / (reached - end),
      error: said ? Math.abs(said.median / dayMs - reached) / (reached - end) : undefined,
      inside:
        said !== null &&
        date(said.low) <= Math.floor(reached) &&
        (said.high === null || Math.floor(reached) <= date(said.high)),
    });
  }
  return { comes, ...tally };
}

/** How good forecasts are, each figure with its 95 % interval. */
export interface Accuracy {
  /** Median error of the day as a share of the time left, where one was forecast. */
  readonly error: Figure;
  /** The same of a straight line through the losses since the last break. */
  readonly lineError: Figure;
  /** Share of true days between low and high, where one was forecast. */
  readonly coverage: Figure;
  /** Days that come and were not forecast. */
  readonly missing: number;
}

/** Draws outcomes together. */
export function accuracy(comes: readonly Outcome[]): Accuracy {
  const forecast = comes.filter(({ error }) => error !== undefined);
  const inside = forecast.filter((one) => one.inside).length;
  return {
    error: medianFigure(forecast.map(({ error }) => error ?? Number.NaN)),
    lineError: medianFigure(comes.map(({ lineError }) => lineError)),
    coverage: { value: inside / forecast.length, n: forecast.length, limits: wilson(inside, forecast.length) },
    missing: comes.length - forecast.length,
  };
}

const medianFigure = (errors: readonly number[]): Figure => ({
  value: median(errors),
  n: errors.length,
  limits: bootstrap(errors, median),
});

/** Day on which a straight line of least squares through the losses since the last break reaches the margin. */
function lineDay({ time, loss, alarmThreshold, breaks, dailyLow }: DirtSeries): number {
  const from = time.findIndex((instant) => instant >= (breaks.at(-1)?.time ?? 0));
  const [instants, losses] = [time.subarray(from), loss.subarray(from)];
  const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [middle, level] = [mean(instants), mean(losses)];
  let [products, squares] = [0, 0];
  for (const [row, instant] of instants.entries()) {
    products += (instant - middle) * ((losses[row] as number) - level);
    squares += (instant - middle) ** 2;
  }
  const margin = -10 * Math.log10(1 - alarmThreshold / 100) - dailyLow;
  return (middle + ((margin - level) * squares) / products) / dayMs;
}
