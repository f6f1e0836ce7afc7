import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfPowerLoss } from '../numbers/index.js';
import { normalNoise } from '../statistics/normalNoise.js';
import { movementFit } from './movementFit.js';

const rows = 24 * 60;
const unit = halfPowerLoss.value;
const swing = Float64Array.from(
  { length: rows },
  (_, i) => 10 + (6 + 3 * Math.sin(i / 170)) * Math.sin((2 * Math.PI * i) / 24),
);

/** Loss of a head off by `offset`, moved by `movement` at the ends of the proxy's usual range [half-angles]. */
function lossOf(proxy: Float64Array, offset: number, movement: number, reference: number, halfRange: number) {
  return proxy.map((u) => 1 + unit * (offset + (movement * (u - reference)) / halfRange) ** 2);
}

describe('movementFit', () => {
  const { reference, halfRange } = movementFit(
    swing.map((u) => u),
    swing,
  );

  it('law: offset and movement come back from a loss without noise, with what re-aiming wins', () => {
    const offset = fc.double({ min: -1, max: 1, noNaN: true });
    const movement = fc.double({ min: 0.05, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(offset, movement, (o, g) => {
        const found = movementFit(lossOf(swing, o, g, reference, halfRange), swing);
        expect(found.determined).toBe(true);
        expect(found.offset.value).toBeCloseTo(o, 6);
        expect(found.movement.value).toBeCloseTo(g, 6);
        expect(found.movementPerUnit.value).toBeCloseTo(g / halfRange, 6);
        expect(found.lossAtRest.value).toBeCloseTo(unit * o * o, 5);
        expect(found.winAtLow.value).toBeCloseTo(unit * ((Math.abs(o) + g) ** 2 - g * g), 5);
        expect(found.peak).toBeCloseTo(reference - (o / g) * halfRange, 3);
      }),
      { seed: 81, numRuns: 40 },
    );
  });
  it('law: no offset, nothing to win; the peak is in the middle', () => {
    const found = movementFit(lossOf(swing, 0, 0.3, reference, halfRange), swing);
    expect(found.winAtLow.value).toBeCloseTo(0, 6);
    expect(found.winAtLow.low).toBe(0);
    expect(found.peak).toBeCloseTo(reference, 6);
  });
  it('law: the unit of the proxy does not matter', () => {
    const loss = lossOf(swing, 0.4, 0.2, reference, halfRange).map((value, i) => value + 0.02 * Math.cos(i));
    const [celsius, fahrenheit] = [
      movementFit(loss, swing),
      movementFit(
        loss,
        swing.map((u) => 32 + 1.8 * u),
      ),
    ];
    expect(fahrenheit.offset.value).toBeCloseTo(celsius.offset.value, 9);
    expect(fahrenheit.movementPerUnit.value).toBeCloseTo(celsius.movementPerUnit.value / 1.8, 9);
  });

  it('in noise that lasts, with a dip a day: limits of 90 % hold the truth about 90 times in 100', () => {
    const noise = normalNoise(82);
    const [trials, held] = [150, { offset: 0, movement: 0, win: 0 }];
    const holds = ({ low, high }: { low: number; high: number }, truth: number) =>
      low <= truth && truth <= high ? 1 : 0;
    for (let trial = 0; trial < trials; trial++) {
      let kept = 0;
      const daily = Array.from({ length: 60 }, noise);
      const loss = lossOf(swing, 0.6, 0.15, reference, halfRange).map((value, i) => {
        kept = 0.9 * kept + 0.02 * noise();
        return value + kept + 0.05 * noise() + 0.05 * (daily[Math.floor(i / 24)] as number) + (i % 24 === 5 ? 4 : 0);
      });
      const found = movementFit(loss, swing, { block: 24 });
      held.offset += holds(found.offset, 0.6);
      held.movement += holds(found.movement, 0.15);
      held.win += holds(found.winAtLow, unit * (0.75 ** 2 - 0.15 ** 2));
    }
    for (const count of Object.values(held)) {
      expect(count).toBeGreaterThanOrEqual(124); // 135 expected; 3.7 is the standard deviation of the count
      expect(count).toBeLessThanOrEqual(146);
    }
  });
  describe('limits in quiet noise are those of first-order error propagation', () => {
    const noise = normalNoise(85);
    const loss = lossOf(swing, 0.6, 0.3, reference, halfRange).map((value) => value + 0.02 * noise());
    const found = movementFit(loss, swing);
    const [, b = Number.NaN, c = Number.NaN] = found.fit.coefficients;
    const entry = (i: number, j: number) => found.fit.covariance[i]?.[j] as number;
    const t90 = 1.6458; // Student, 1437 degrees of freedom
    const reach = ({ low, high }: { readonly low: number; readonly high: number }) => (high - low) / 2;
    it('of the movement, root of curvature over 3.01 dB', () =>
      expect(reach(found.movement) / ((t90 * Math.sqrt(entry(2, 2))) / (2 * Math.sqrt(unit * c)))).toBeCloseTo(1, 2));
    it('of the offset, slope over twice the root of both', () => {
      const [byB, byC] = [1 / (2 * Math.sqrt(unit * c)), -b / (4 * Math.sqrt(unit) * c ** 1.5)];
      const variance = byB ** 2 * entry(1, 1) + 2 * byB * byC * entry(1, 2) + byC ** 2 * entry(2, 2);
      expect(reach(found.offset) / (t90 * Math.sqrt(variance))).toBeCloseTo(1, 2);
      expect((found.offset.low + found.offset.high) / 2 / found.offset.value).toBeCloseTo(1, 2);
    });
    it('of the loss at rest, the squares of the offset\u2019s own', () => {
      expect(found.lossAtRest.low).toBeCloseTo(unit * found.offset.low ** 2, 12);
      expect(found.lossAtRest.high).toBeCloseTo(unit * found.offset.high ** 2, 12);
    });
    it('of what re-aiming wins: the loss at rest, and the slope at the end of the movement', () => {
      const margin = t90 * Math.sqrt(entry(1, 1));
      expect(found.winAtLow.low).toBeCloseTo(found.lossAtRest.low + b - margin, 4);
      expect(found.winAtLow.high).toBeCloseTo(found.lossAtRest.high + b + margin, 4);
      expect(found.winAtLow.value).toBeCloseTo(found.lossAtRest.value + b, 9);
    });
    it('a unit of the proxy is its share of half the range, in all limits', () => {
      for (const end of ['value', 'low', 'high'] as const)
        expect(found.movementPerUnit[end] * halfRange).toBeCloseTo(found.movement[end], 12);
    });
    it('more confidence, wider limits: 1.96 to 1.65', () => {
      const wide = movementFit(loss, swing, { confidence: 0.95 });
      expect(reach(wide.movement) / reach(found.movement)).toBeCloseTo(1.9617 / t90, 2);
      expect(wide.movement.value).toBe(found.movement.value);
    });
    it('the reference is the middle of the usual range, its ends the 2nd and the 98th percentile', () => {
      const steps = Float64Array.from({ length: 101 }, (_, i) => i);
      const even = movementFit(
        steps.map((u) => unit * (0.5 + (0.2 * (u - 50)) / 48) ** 2),
        steps,
      );
      expect(even.reference).toBeCloseTo(50, 9);
      expect(even.halfRange).toBeCloseTo(48, 9);
      expect(even.offset.value).toBeCloseTo(0.5, 6);
    });
  });
  it('what it wins on average counts where the movement dwells', () => {
    // Two rows in three at the warm end: the middle of the proxy lies a third of half the range above its reference.
    const dwelling = Float64Array.from({ length: 600 }, (_, i) => [0, 10, 20, 20, 20, 20][i % 6] as number);
    const found = movementFit(
      dwelling.map((u) => unit * (0.4 + (0.2 * (u - 10)) / 10) ** 2),
      dwelling,
    );
    const middle = (0 + 10 + 4 * 20) / 6 / 10 - 1;
    expect(found.winOnAverage.value).toBeCloseTo(unit * (0.4 ** 2 + 2 * 0.4 * 0.2 * middle), 6);
  });
  it('an offset that may be none has a loss at rest from nothing on, and wins from nothing on', () => {
    const noise = normalNoise(86);
    const loss = lossOf(swing, 0, 0.3, reference, halfRange).map((value) => value + 0.1 * noise());
    const found = movementFit(loss, swing);
    expect(found.offset.low).toBeLessThan(0);
    expect(found.offset.high).toBeGreaterThan(0);
    expect(found.lossAtRest.low).toBe(0);
    expect(found.lossAtRest.high).toBeCloseTo(unit * Math.max(Math.abs(found.offset.low), found.offset.high) ** 2, 12);
    expect(found.winAtLow.low).toBe(0);
  });
  it('to the other side of the peak all is mirrored', () => {
    const noise = normalNoise(87);
    const loss = lossOf(swing, 0.6, 0.3, reference, halfRange).map((value) => value + 0.02 * noise());
    const [right, left] = [
      movementFit(loss, swing),
      movementFit(
        loss,
        swing.map((u) => -u),
      ),
    ];
    expect(left.offset.value).toBeCloseTo(-right.offset.value, 9);
    expect(left.offset.low).toBeCloseTo(-right.offset.high, 9);
    expect(left.lossAtRest.low).toBeCloseTo(right.lossAtRest.low, 9);
    expect(left.winAtLow.low).toBeCloseTo(right.winAtLow.low, 9);
    expect(left.peak).toBeCloseTo(-right.peak, 6);
  });
  it('a curvature that cannot be told gives bounds: the offset no smaller than the slope demands', () => {
    const noise = normalNoise(83);
    const loss = lossOf(swing, 0.8, 0.03, reference, halfRange).map((value) => value + 0.1 * noise());
    const found = movementFit(loss, swing);
    expect(found.determined).toBe(false);
    expect(found.offset.value).toBeNaN();
    expect(found.movement.low).toBe(0);
    expect(found.movement.high).toBeGreaterThan(0.03);
    expect(found.offset.low).toBeGreaterThan(0.2);
    expect(found.offset.low).toBeLessThan(0.8);
    expect(found.offset.high).toBe(Infinity);
    expect(found.winAtLow.low).toBeGreaterThan(0.1);
    const mirrored = movementFit(
      loss,
      swing.map((u) => -u),
    );
    expect(mirrored.offset.high).toBeCloseTo(-found.offset.low, 9);
  });
  it('a loss that does not follow the proxy says nothing about the aim', () => {
    const noise = normalNoise(84);
    const found = movementFit(
      swing.map(() => 1 + 0.1 * noise()),
      swing,
    );
    expect([found.determined, found.offset.low, found.offset.high]).toEqual([false, -Infinity, Infinity]);
    expect(found.lossAtRest.low).toBe(0);
  });
  it('a proxy that stands still, or no rows, tell nothing', () => {
    const still = movementFit(
      swing,
      swing.map(() => 20),
    );
    expect(still.determined).toBe(false);
    expect(still.movement.high).toBeNaN();
    expect(movementFit(new Float64Array(0), new Float64Array(0)).offset.low).toBeNaN();
  });
  it('missing values and weights of 0 leave rows out', () => {
    const loss = lossOf(swing, 0.5, 0.2, reference, halfRange).map((value, i) => (i % 5 === 0 ? Number.NaN : value));
    const wild = loss.map((value, i) => (i % 5 === 1 ? 50 : value));
    const weights = loss.map((_, i) => (i % 5 === 1 ? 0 : 1));
    expect(movementFit(wild, swing, { weights }).offset.value).toBeCloseTo(0.5, 1);
  });
  it('says what must change', () =>
    expect(() => movementFit(new Float64Array(2), swing)).toThrow('2 losses and 1440 proxies must be as many'));
});
