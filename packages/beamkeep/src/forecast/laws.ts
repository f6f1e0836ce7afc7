import { type Explanation, explanation, type Law, paceOf, type Shape } from './accumulation.js';
import { dailyNoise, dailySteps } from './dailyLoss.js';
import type { ClockedReadings, Readings } from './readings.js';
import { evenWeek, weeks } from './soilingWeek.js';

/*
 * Laws are weighed against each other, none is chosen: each forecasts in proportion to what was believed of it before
 * (below) times the likelihood of the readings under it.
 */

/** A law with what it makes of the readings and its share of belief. */
export interface WeighedLaw extends Law, Explanation {
  /** All weights add up to 1. */
  readonly weight: number;
}

/** A list of choices, each with how far it is believed in before anything is read. */
type Beliefs<T> = readonly (readonly [choice: T, belief: number])[];

/** Ceilings that are thought of, as multiples of the most dirt read so far: the nearer, the better the readings tell. */
const ceilings = [1.03, 1.05, 1.08, 1.11, 1.15, 1.2, 1.27, 1.36, 1.48, 1.65, 1.9, 2.3, 3, 5];
const ceilingBelief = 0.15 / Math.log(5); // even in the logarithm of the ceiling: a far one is as likely as a near one
/**
 * Neither physics nor measurement has settled whether dB or obscuration grow steadily, and the days themselves often do
 * not: believing in both costs a beam of the one kind little and saves a beam of the other. Grains that block light each for
 * themselves speak for dB, and it has most of the belief.
 */
const dirtShapes = (most: number): Beliefs<Shape> => [
  [{ kind: 'steady' }, 0.65],
  [{ kind: 'obscuration', share: 0.5 }, 0.08],
  [{ kind: 'obscuration', share: 1 }, 0.12],
  ...ceilings.map(
    (times, k) =>
      [{ kind: 'ceiling', at: times * most }, ceilingBelief * Math.log(times / (ceilings[k - 1] ?? 1))] as const,
  ),
];
const creepShapes: Beliefs<Shape> = [
  [{ kind: 'creep' }, 0.6],
  [{ kind: 'steady' }, 0.4],
];
const wanders: Beliefs<number> = [
  [0.03, 0.25],
  [0.1, 0.3],
  [0.22, 0.3],
  [0.45, 0.15],
];
const memories = [3, 15]; // days
const bursts: Beliefs<number> = [
  [0, 0.2],
  [0.001, 0.15],
  [0.005, 0.2],
  [0.03, 0.15],
  [0.12, 0.15],
  [0.5, 0.15],
];

/** Laws of less belief than this change no forecast. */
const leastWeight = 1e-4;

/**
 * Every law of the family with its share of belief, those of next to none left out.
 *
 * @param creeping whether the aim is known to creep: that speeds up by a law of its own
 */
export function weighedLaws(readings: ClockedReadings, creeping: boolean): WeighedLaw[] {
  const shapes = creeping ? creepShapes : dirtShapes(readings.soil.reduce((most, soil) => Math.max(most, soil), 0));
  const noises = possibleNoises(readings);
  const candidates: { law: Law; explained: Explanation; score: number }[] = [];
  for (const [shape, p] of shapes) {
    const pace = paceOf(shape, readings);
    for (const [wander, q] of wanders)
      for (const [burst, r] of bursts)
        for (const memory of memories)
          for (const noise of noises) {
            const law = { shape, wander, memory, burst, noise };
            const explained = explanation(law, readings, pace);
            candidates.push({ law, explained, score: explained.fit + Math.log(p * q * r) });
          }
  }
  const best = candidates.reduce((most, { score }) => Math.max(most, score), Number.NEGATIVE_INFINITY);
  const believed = candidates.filter(({ score }) => score - best > Math.log(leastWeight));
  const total = believed.reduce((sum, { score }) => sum + Math.exp(score - best), 0);
  return believed.map(({ law, explained, score }) => ({
    ...law,
    ...explained,
    weight: Math.exp(score - best) / total,
  }));
}

/** What the spread of a reading may be: most of what days differ by, or half of it; all of it where bursts hide it. */
function possibleNoises({ days }: Readings): number[] {
  const usual = dailyNoise(days);
  const steps = dailySteps(days);
  const whole = Math.sqrt(steps.reduce((sum, step) => sum + step * step, 0) / steps.length / 2);
  return [0.5 * usual, usual, ...(whole > 1.5 * usual ? [whole] : [])];
}

/** How much better a week with rest must explain the readings than one without (there are fourteen to choose from). */
const leastReason = 4;

/** Adds the clock of the week that explains the readings best. */
export function clocked(readings: Readings): ClockedReadings {
  const law: Law = {
    shape: { kind: 'steady' },
    wander: 0.2,
    memory: 10,
    burst: 0.005,
    noise: 0.7 * dailyNoise(readings.days),
  };
  let best = { clock: evenWeek, reason: explanation(law, { ...readings, clock: evenWeek }).fit + leastReason };
  for (const clock of weeks) {
    const reason = explanation(law, { ...readings, clock }).fit;
    if (reason > best.reason) best = { clock, reason };
  }
  return { ...readings, clock: best.clock };
}
