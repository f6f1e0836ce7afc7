import type { MeasuredCurve } from '../effects/measured.js';
import { random } from '../random.js';
import type { Scenario } from '../scenario.js';
import { drawScenario } from './drawScenario.js';
import type { Happening } from './happening.js';
import { type RangeSet, rangeSets } from './ranges.js';

/** How a measured curve is laid into a simulated beam. */
export interface CurveScenarioOptions {
  /** Length of smoke that the light crosses [m]; twice the smoke's width when reflected. */
  readonly metres: number;
  /** [s] */
  readonly intervalSeconds: number;
  readonly ranges: RangeSet;
  /** What else happens to the beam; nothing when left out. */
  readonly happenings?: readonly Happening[];
  /** How long the curve's last value is held [s]; 1200 when left out: measured smoke stayed for minutes. */
  readonly held?: number;
  /** How long it then takes to clear to a third [s]; 1800 when left out. */
  readonly clears?: number;
}

/** Samples before and about a curve: half a day at 1 s, some days at 10 s, a fortnight at a minute. */
const samples = (interval: number) => Math.round(Math.min(43_200, Math.max(6000, 43_200 / interval ** 0.18)));

/**
 * A log of one beam with a measured curve of smoke in it.
 *
 * @param curve the curve, per metre
 * @param seed whole number: draws the beam and the moment
 */
export function curveScenario(curve: MeasuredCurve, seed: number, options: CurveScenarioOptions): Scenario {
  const { intervalSeconds, metres, held = 1200, clears = 1800, happenings = [] } = options;
  const timing = { intervalSeconds, samples: samples(intervalSeconds) };
  const drawn = drawScenario(rangeSets[options.ranges], seed, {
    kind: 'single',
    happenings: [happenings],
    timing,
    budget: timing.samples,
  });
  const length = timing.samples * intervalSeconds * 1000;
  const from = Math.round(drawn.start + random(seed, 'curve').between(0.4, 0.8) * length);
  return {
    ...drawn,
    // The loss is asked for as it is: no gain control before it, and no drowned scale.
    beams: drawn.beams.map(({ gainControl: _, ...beam }) => ({
      ...beam,
      effects: [...beam.effects, { effect: 'measured', curve, from, metres, held, clears }],
    })),
  };
}
