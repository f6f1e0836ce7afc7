import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { explanation, type Law, relativeRate } from './accumulation.js';
import type { DailyLoss } from './dailyLoss.js';
import { readings } from './readings.js';
import { evenWeek } from './soilingWeek.js';

const law: Law = { shape: { kind: 'steady' }, wander: 0.3, memory: 5, burst: 0.5, noise: 0.01 };
const losses = [0.02, 0.05, 0.06, 0.1, 0.13, 0.13, 0.17, 0.2, 0.26, 0.27];
const days: DailyLoss[] = losses.map((loss, row) => ({ at: row + (row > 4 ? 2 : 0), loss, run: 0 })); // two days missing

function ready(of: readonly DailyLoss[]) {
  const known = readings(of, [{ time: 0, restoration: true }]);
  if (!known) throw new Error('no trend');
  return { ...known, clock: evenWeek };
}

/**
 * The slow, plain way: the losses after the first are jointly normal about what the first and a steady rate lead to. The
 * departure of the rate over a step is taken where the step begins, as the filter does.
 */
function plainFit({ wander, memory, burst, noise }: Law, of: readonly DailyLoss[], pilot: number): number {
  const first = of[0] as DailyLoss;
  const rest = of.slice(1);
  const steps = of
    .slice(1)
    .map(({ at }, row) => ({ from: (of[row] as DailyLoss).at, length: at - (of[row] as DailyLoss).at }));
  const covariance = Matrix.zeros(rest.length, rest.length);
  for (const i of rest.keys())
    for (const j of rest.slice(0, i + 1).keys()) {
      let sum = noise ** 2 * (i === j ? 2 : 1); // the first reading's noise is in all of them
      for (const a of steps.slice(0, i + 1))
        for (const b of steps.slice(0, j + 1))
          sum +=
            a.length * b.length * pilot ** 2 * (1 + wander ** 2 * Math.exp(-Math.abs(a.from - b.from) / memory)) +
            (a === b ? a.length * pilot ** 2 * burst : 0);
      covariance.set(i, j, sum);
      covariance.set(j, i, sum);
    }
  const off = Matrix.columnVector(rest.map(({ loss, at }) => loss - first.loss - pilot * (at - first.at)));
  const root = new CholeskyDecomposition(covariance);
  const logDeterminant = 2 * root.lowerTriangularMatrix.diagonal().reduce((sum, value) => sum + Math.log(value), 0);
  const squares = off.transpose().mmul(root.solve(off)).get(0, 0);
  return -0.5 * (squares + logDeterminant + rest.length * Math.log(2 * Math.PI));
}

describe('explanation', () => {
  it('gives the likelihood that the joint normal distribution gives', () => {
    const known = ready(days);
    expect(explanation(law, known).fit).toBeCloseTo(plainFit(law, days, known.pilot), 9);
  });
  it('finds the rate of a plain line and is sure of it', () => {
    const line = losses.map((_, row) => ({ at: row, loss: 0.03 * row, run: 0 }));
    const { state, covariance } = explanation({ ...law, wander: 0.01, burst: 0, noise: 1e-4 }, ready(line));
    expect(state[0]).toBeCloseTo(0.27, 4);
    expect(state[2]).toBeCloseTo(0.03, 4);
    expect(Math.sqrt(covariance[5])).toBeLessThan(0.001);
  });
  it('keeps the rate over a cleaning and takes the loss as it is read', () => {
    const cleaned = [...days, { at: 12, loss: 0.01, run: 1 }];
    const { state } = explanation(law, ready(cleaned));
    expect(state[0]).toBe(0.01);
    expect(state[2]).toBeCloseTo(explanation(law, ready(days)).state[2], 1);
  });
  it('thinks more of a ceiling where growth levels off, and of none where it does not', () => {
    const levelling = Array.from({ length: 60 }, (_, at) => ({ at, loss: 0.5 * (1 - Math.exp(-at / 20)), run: 0 }));
    const rising = Array.from({ length: 60 }, (_, at) => ({ at, loss: 0.01 * at, run: 0 }));
    const fit = (of: readonly DailyLoss[], shape: Law['shape']): number =>
      explanation({ ...law, burst: 0, wander: 0.1, shape }, ready(of)).fit;
    expect(fit(levelling, { kind: 'ceiling', at: 0.5 })).toBeGreaterThan(fit(levelling, { kind: 'steady' }) + 5);
    expect(fit(rising, { kind: 'steady' })).toBeGreaterThan(fit(rising, { kind: 'ceiling', at: 0.65 }) + 5);
  });
});

describe('relativeRate', () => {
  it('stops at a ceiling', () => {
    expect(relativeRate({ kind: 'ceiling', at: 2 }, 1)).toBe(0.5);
    expect(relativeRate({ kind: 'ceiling', at: 2 }, 3)).toBe(0);
  });
  it('makes obscuration grow steadily: dB a percent rise by 1 / (1 - o)', () =>
    expect(relativeRate({ kind: 'obscuration', share: 1 }, 10 * Math.log10(1 / 0.8))).toBeCloseTo(1 / 0.8, 12));
  it('makes a creeping aim go with the root: loss with the square of time', () =>
    expect(relativeRate({ kind: 'creep' }, 0.36) / relativeRate({ kind: 'creep' }, 0.09)).toBeCloseTo(2, 12));
});
