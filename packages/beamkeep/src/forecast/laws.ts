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
 * Grains that fall where they like each take their share of the light that is left, so that dB grow steadily; obscuration
 * does while they do not overlap, as those who keep solar panels reckon. Measurement has not parted the two: dB, after the
 * physics, have twice the belief, and where the readings do not tell, the forecast lies between the two and its interval
 * holds both. The shares are of own choice.
 */
const dirtShapes = (most: number): Beliefs<Shape> => [
  [{ kind: 'steady' }, 0.48],
  [{ kind: 'obscuration', share: 0.5 }, 0.13],
  [{ kind: 'obscuration', share: 1 }, 0.24],
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
/** Lumps as days of the usual growth [days]: up to 1 the days merely differ, above it dirt comes now and then. Own choice. */
const bursts: Beliefs<number> = [
  [0, 0.1],
  [0.03, 0.12],
  [0.1, 0.16],
  [0.3, 0.18],
  [1, 0.16],
  [3, 0.14],
  [10, 0.14],
];

/** Laws of less belief than this change no forecast. */
const leastWeight = 1e-4;
/** Manners of less belief than this under each of a few shapes are not tried with the others. */
const leastManner = 2e-3;

/** How dirt gathers apart from its shape, and how it is read. */
type Manner = Omit<Law, 'shape'>;

/**
 * Every law of the family with its share of belief, those of next to none left out.
 *
 * @param creeping whether the aim is known to creep: that speeds up by a law of its own
 */
export function weighedLaws(readings: ClockedReadings, creeping: boolean): WeighedLaw[] {
  const shapes = creeping ? creepShapes : dirtShapes(readings.soil.reduce((most, soil) => Math.max(most, soil), 0));
  const manners = likelyManners(readings, shapes);
  const candidates = shapes.flatMap(([shape, belief]) => {
    const pace = paceOf(shape, readings);
    return manners.map(([manner, share]) => {
      const law = { shape, ...manner };
      const explained = explanation(law, readings, pace);
      return { law, explained, score: explained.fit + Math.log(belief * share) };
    });
  });
  const best = candidates.reduce((most, { score }) => Math.max(most, score), Number.NEGATIVE_INFINITY);
  const believed = candidates.filter(({ score }) => score - best > Math.log(leastWeight));
  const total = believed.reduce((sum, { score }) => sum + Math.exp(score - best), 0);
  return believed.map(({ law, explained, score }) => ({
    ...law,
    ...explained,
    weight: Math.exp(score - best) / total,
  }));
}

/** Places in the list of shapes that lie far apart: steady in dB, steady in obscuration, a ceiling not far off. */
const farApart = [0, 2, 8];

/** Manners that explain the readings well under one at least of a few shapes that lie far apart. */
function likelyManners(readings: ClockedReadings, shapes: Beliefs<Shape>): Beliefs<Manner> {
  const manners = allManners(readings);
  const kept = new Set<number>();
  for (const row of farApart) {
    const shape = shapes[row]?.[0];
    if (shape === undefined) continue;
    const pace = paceOf(shape, readings);
    const scores = manners.map(
      ([manner, share]) => explanation({ shape, ...manner }, readings, pace).fit + Math.log(share),
    );
    const best = scores.reduce((most, score) => Math.max(most, score), Number.NEGATIVE_INFINITY);
    for (const [k, score] of scores.entries()) if (score - best > Math.log(leastManner)) kept.add(k);
  }
  return manners.filter((_, k) => kept.has(k));
}

function allManners(readings: Readings): Beliefs<Manner> {
  const noises = possibleNoises(readings);
  const manners: [Manner, number][] = [];
  for (const [wander, q] of wanders)
    for (const [burst, r] of bursts)
      for (const memory of memories)
        for (const noise of noises) manners.push([{ wander, memory, burst, noise }, q * r]);
  return manners;
}

/** What the spread of a reading may be: what days differ by, or a part of it where the dirt differs; more where bursts hide it. */
function possibleNoises({ days }: Readings): number[] {
  const usual = dailyNoise(days);
  const steps = dailySteps(days);
  const whole = Math.sqrt(steps.reduce((sum, step) => sum + step * step, 0) / steps.length / 2);
  return [0.2 * usual, 0.5 * usual, usual, ...(whole > 1.5 * usual ? [whole] : [])];
}

/** How much better a week with rest must explain the readings than one without (there are fourteen to choose from). */
const leastReason = 4;

/** Adds the clock of the week that explains the readings best. */
export function clocked(readings: Readings): ClockedReadings {
  const law: Law = {
    shape: { kind: 'steady' },
    wander: 0.2,
    memory: 10,
    burst: 0.3,
    noise: 0.7 * dailyNoise(readings.days),
  };
  let best = { clock: evenWeek, reason: explanation(law, { ...readings, clock: evenWeek }).fit + leastReason };
  for (const clock of weeks) {
    const reason = explanation(law, { ...readings, clock }).fit;
    if (reason > best.reason) best = { clock, reason };
  }
  return { ...readings, clock: best.clock };
}
