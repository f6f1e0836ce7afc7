import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceOf, recordOf } from '../../../../tests/diagnosis/kit.js';
import { cut } from './cells.js';
import { dailyCycle } from './dailyCycle.js';

const cellsOf = (days: number) => cut(recordOf(() => 1, { days, intervalSeconds: 900 }).trace, 900, 0);

/** A smooth shape that is no sine, about its middle. */
const shape = (hour: number): number =>
  Math.cos(((hour - 15) / 24) * 2 * Math.PI) + 0.3 * Math.cos((hour / 12) * 2 * Math.PI);

describe('dailyCycle', () => {
  const days = 20;
  const cells = cellsOf(days);
  const courseOf = (amplitude: (day: number) => number, noise = 0.01, seed = 1): Float64Array =>
    Float64Array.from(
      { length: cells.length },
      (_, c) => amplitude(Math.floor(c / 24)) * shape(c % 24) + noise * (chanceOf(c, seed) - 0.5),
    );

  it('law: is found whatever the weather of single days', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.4, max: 1, noNaN: true }), { minLength: days, maxLength: days }),
        (weather) => {
          const { loss, fitted } = dailyCycle(
            cells,
            courseOf((d) => weather[d] as number),
            0.01,
          );
          expect(fitted).toBe(true);
          // About midnight one day's amplitude passes into the next.
          for (let c = 0; c < cells.length; c++)
            if (c % 24 >= 3 && c % 24 < 21)
              // Smoothed round the clock by a quarter each side: within 5 % of the day's amplitude.
              expect(
                Math.abs((loss[c] as number) - (weather[Math.floor(c / 24)] as number) * shape(c % 24)),
              ).toBeLessThan(0.07);
        },
      ),
      { seed: 1, numRuns: 20 },
    ));
  it('does not jump at midnight, however unlike two days are', () => {
    const { loss } = dailyCycle(
      cells,
      courseOf((d) => (d % 2 === 0 ? 0.4 : 1)),
      0.01,
    );
    for (let c = 24; c < cells.length; c += 24) {
      const change = (loss[c] as number) - (loss[c - 1] as number);
      expect(Math.abs(change - 0.7 * (shape(0) - shape(23)))).toBeLessThan(0.1);
    }
  });
  it('is not pulled by an event of some hours on some days', () => {
    const clean = courseOf(() => 0.5);
    const struck = clean.map((v, c) => (c % 24 >= 9 && c % 24 < 12 && Math.floor(c / 24) % 5 === 2 ? v + 3 : v));
    const [one, other] = [dailyCycle(cells, clean, 0.01).loss, dailyCycle(cells, struck, 0.01).loss];
    const far = Math.max(...one.map((v, c) => (Math.floor(c / 24) % 5 === 2 ? 0 : Math.abs(v - (other[c] as number)))));
    expect(far).toBeLessThan(0.03);
  });
  it('bends where the lobe bends it: a second shape of its own amplitude', () => {
    const turn = (c: number): number =>
      0.15 * (0.5 + chanceOf(Math.floor(c / 24), 3)) * Math.cos((((c % 24) - 15) / 24) * 2 * Math.PI);
    const course = Float64Array.from({ length: cells.length }, (_, c) => 3.01 * (0.2 + turn(c)) ** 2);
    const middle = course.map((v, c) => v - 3.01 * (0.04 + (0.15 * (0.5 + chanceOf(Math.floor(c / 24), 3))) ** 2 / 2));
    const { loss } = dailyCycle(cells, middle, 0.01);
    // About midnight one day's amplitude passes into the next.
    const off = loss.map((v, c) => (c % 24 >= 3 && c % 24 < 21 ? Math.abs(v - (middle[c] as number)) : 0));
    expect(Math.max(...off)).toBeLessThan(0.03);
  });
  it('bridges missing cells', () => {
    const holed = courseOf(() => 0.5).map((v, c) => (chanceOf(c, 8) < 0.3 ? Number.NaN : v));
    const { loss } = dailyCycle(cells, holed, 0.01);
    expect(Math.max(...loss.map((v, c) => Math.abs(v - 0.5 * shape(c % 24))))).toBeLessThan(0.05);
  });
  it('is none in a log of less than four days', () => {
    const few = cellsOf(3);
    const { loss, fitted } = dailyCycle(few, new Float64Array(few.length).fill(1), 0.01);
    expect(fitted).toBe(false);
    expect(Math.max(...loss)).toBe(0);
  });
});
