import { leftOut, outOfReach, whoDecides } from '../../smoke/index.js';
import { type Band, type Detection, detection, type FireCurves, looksBlocked } from './detection.js';
import { frontier, settingsOf } from './frontier.js';
import { standardLimits } from './standardLimits.js';
import type { NuisanceGrid, ToldBand, TradeOff } from './tradeOff.js';

/*
 * Both costs of every pair of threshold and delay: how late the chosen fires are found and how large they are then,
 * against how often a log would have alarmed in a year. Rows are thresholds, columns delays.
 */

/** What is weighed. */
export interface TradeOffQuestion {
  readonly beam: string;
  /** Obscuration [%], rising. */
  readonly thresholds: readonly number[];
  /** [s], rising */
  readonly delays: readonly number[];
  readonly current: { readonly threshold: number; readonly delay: number };
  /** Obscuration treated as a blocked beam [%]. */
  readonly faultThreshold: number;
  readonly curves: readonly FireCurves[];
  /** Left out where there is no log. */
  readonly nuisance?: NuisanceGrid;
  /** [m] */
  readonly ceiling?: number;
  /** What had to be assumed, in words. */
  readonly assumed?: readonly string[];
}

/** What a trade-off leaves out beside what the smoke laws do. */
const notWeighed: readonly string[] = [
  'Every alarm of the log counts as a nuisance: whether one of them was a fire, the log cannot say.',
  'The past of one log is not the future of a site: seasons, work and dirt change.',
];

/** Both costs of every setting. */
export function tradeOffOf(question: TradeOffQuestion): TradeOff {
  const { beam, thresholds, delays, current, curves, nuisance, ceiling, assumed = [], faultThreshold } = question;
  const found = curves.map((each) =>
    thresholds.map((threshold) => delays.map((delay) => detection(each, threshold, delay))),
  );
  const fires = curves.map((each, i) => ({
    fire: each.fire.words,
    fuel: `${each.fire.fuel.words}: ${each.fire.fuel.source}`,
    cells: (found[i] ?? []).map((row) => row.map(told)),
    current: told(detection(each, current.threshold, current.delay)),
  }));
  const weighed = { thresholds, delays, fires, nuisance: nuisance ?? null };
  return {
    beam,
    thresholds,
    delays,
    current,
    fires,
    nuisance: nuisance ?? null,
    frontier: frontier(settingsOf(weighed)),
    limits: standardLimits(ceiling),
    warnings: [
      ...curves.flatMap((each) => {
        const { late } = detection(each, current.threshold, current.delay).seconds;
        return outOfReach(each.scene, Math.min(late, each.watched)).map((words) => `${each.fire.words}: ${words}`);
      }),
      ...curves
        .filter((each) => looksBlocked(each, faultThreshold))
        .map(
          ({ fire }) =>
            `${fire.words}: its smoke may come so quickly that equipment takes it for a blocked beam and gives a fault.`,
        ),
    ],
    assumed,
    leftOut: [...notWeighed, ...leftOut],
    decides: whoDecides,
  };
}

const toldBand = ({ value, early, late }: Band): ToldBand => ({
  value: finite(value),
  early: finite(early),
  late: finite(late),
});

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

const told = ({ seconds, heat }: Detection): { seconds: ToldBand; heat: ToldBand } => ({
  seconds: toldBand(seconds),
  heat: toldBand(heat),
});
