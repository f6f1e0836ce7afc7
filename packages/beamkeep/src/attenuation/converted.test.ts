import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { UsageError } from '../columns/index.js';
import { converted } from './converted.js';
import { type Unit, units } from './unit.js';

const seed = 20270102;
const relative = (a: number, b: number): number => (a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b)));
const pairs = units.flatMap((from) => units.map((to) => [from, to] as const));
const endless = units.filter((unit) => unit !== 'transmittance' && !unit.startsWith('percent'));
const clean = (unit: Unit): number => (unit === 'transmittance' ? 1 : 0);
const dark = (unit: Unit): number => {
  if (unit === 'transmittance') return 0;
  return unit.startsWith('percent') ? 100 : Number.POSITIVE_INFINITY;
};
/** Path, and the loss over it, such that neither the path nor a metre of it takes more than 30 dB. */
const smoke = (least: number) =>
  fc
    .tuple(
      fc.double({ min: 0.4, max: 300, noNaN: true }),
      fc.double({ min: Math.log10(least), max: 1.47, noNaN: true }),
    )
    .map(([path, exponent]) => ({ path, loss: Math.min(10 ** exponent, 30 * Math.min(path, 1)) }));

describe('converted', () => {
  it.each(pairs)('is exact at both ends: %s to %s', (from, to) => {
    expect(converted(clean(from), from, to, 50)).toBe(clean(to));
    expect(converted(dark(from), from, to, 50)).toBe(dark(to));
  });

  it.each(pairs)('keeps what is missing: %s to %s', (from, to) => {
    expect(converted(Number.NaN, from, to, 50)).toBeNaN();
  });

  it.each(pairs)('gives a number for the most extreme smoke and path: %s to %s', (from, to) => {
    const amounts = [
      clean(from),
      dark(from),
      Number.MIN_VALUE,
      from === 'transmittance' ? 1 - 2 ** -53 : 99.99999999999999,
    ];
    for (const amount of amounts) {
      for (const path of [Number.MIN_VALUE, 1e-12, 1, 1e12, Number.MAX_VALUE]) {
        const result = converted(from === 'transmittance' ? Math.min(amount, 1) : amount, from, to, path);
        expect(result).not.toBeNaN();
        expect(result).toBeGreaterThanOrEqual(0);
        if (dark(to) !== Number.POSITIVE_INFINITY) expect(result).toBeLessThanOrEqual(Math.max(clean(to), dark(to)));
      }
    }
  });

  it('refuses what is not smoke, and says what is', () => {
    expect(() => converted(-1, 'percent', 'decibels', 50)).toThrow(UsageError);
    expect(() => converted(-1, 'percent', 'decibels', 50)).toThrow(
      'value -1 is not smoke in percent: it must be from 0 to 100',
    );
    expect(() => converted(120, 'percent-per-foot', 'decibels', 50)).toThrow('it must be from 0 to 100');
    expect(() => converted(1.2, 'transmittance', 'decibels', 50)).toThrow('it must be from 0 to 1');
    expect(() => converted(-0.1, 'transmittance', 'decibels', 50)).toThrow('it must be from 0 to 1');
    for (const unit of endless) {
      expect(() => converted(-0.1, unit, 'percent', 50)).toThrow('it must be 0 or more');
      expect(() => converted(Number.NEGATIVE_INFINITY, unit, 'percent', 50)).toThrow(UsageError);
    }
    expect(() => converted(Number.POSITIVE_INFINITY, 'percent', 'decibels', 50)).toThrow(UsageError);
  });

  it.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY])('refuses a path of %s m', (path) => {
    expect(() => converted(35, 'percent', 'decibels-per-metre', path)).toThrow(
      `path ${path} m must be more than 0 and finite`,
    );
  });

  it('needs the path only between the whole path and a part of it', () => {
    expect(converted(35, 'percent', 'decibels')).toBe(converted(35, 'percent', 'decibels', 17));
    expect(converted(8, 'percent-per-foot', 'percent-per-metre')).toBe(
      converted(8, 'percent-per-foot', 'percent-per-metre', 17),
    );
    expect(() => converted(35, 'percent', 'decibels-per-metre')).toThrow('so the path is needed, in metres');
    expect(() => converted(0.1, 'extinction-per-metre', 'percent')).toThrow('so the path is needed, in metres');
  });

  it('leaves a value in its own unit as it is', () => {
    for (const unit of units) expect(converted(0.1, unit, unit)).toBe(0.1);
  });

  it('law: there and back is the same smoke within 1e-12, in every pair of units', () => {
    for (const [from, to] of pairs) {
      // A transmittance near 1 has few digits left for thin smoke: a property of the unit, not of the conversion.
      const least = to === 'transmittance' && from !== 'transmittance' ? 0.01 : 1e-9;
      fc.assert(
        fc.property(smoke(least), ({ path, loss }) => {
          const value = converted(loss, 'decibels', from, path);
          const back = converted(converted(value, from, to, path), to, from, path);
          expect(relative(back, value)).toBeLessThanOrEqual(1e-12);
        }),
        { seed, numRuns: 60 },
      );
    }
  });

  it('law: by way of a third unit the answer is the same', () => {
    fc.assert(
      fc.property(smoke(0.01), fc.constantFrom(...units), fc.constantFrom(...units), ({ path, loss }, by, to) => {
        const value = converted(converted(loss, 'decibels', by, path), by, to, path);
        expect(relative(value, converted(loss, 'decibels', to, path))).toBeLessThanOrEqual(1e-12);
      }),
      { seed },
    );
  });

  it('law: losses of joined paths add', () => {
    const length = fc.double({ min: 0.1, max: 200, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.double({ min: 1e-6, max: 0.1, noNaN: true }), (one, other, extinction) => {
        const over = (path: number, unit: Unit) => converted(extinction, 'extinction-per-metre', unit, path);
        expect(relative(over(one, 'decibels') + over(other, 'decibels'), over(one + other, 'decibels'))).toBeLessThan(
          1e-12,
        );
        expect(over(one, 'transmittance') * over(other, 'transmittance')).toBeCloseTo(
          over(one + other, 'transmittance'),
          12,
        );
      }),
      { seed },
    );
  });

  it('law: more smoke is more in every unit but transmittance', () => {
    const growth = fc.double({ min: 1.000001, max: 3, noNaN: true });
    fc.assert(
      fc.property(smoke(1e-6), growth, fc.constantFrom(...units), ({ path, loss }, more, to) => {
        const before = converted(loss, 'decibels', to, path);
        const after = converted(loss * more, 'decibels', to, path);
        if (to === 'transmittance') expect(after).toBeLessThanOrEqual(before);
        else expect(after).toBeGreaterThanOrEqual(before);
      }),
      { seed },
    );
  });

  it('law: percent per foot and per metre obey their exponent', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 99, noNaN: true }), (perFoot) => {
        const perMetre = 100 * (1 - (1 - perFoot / 100) ** (1 / 0.3048));
        expect(converted(perFoot, 'percent-per-foot', 'percent-per-metre')).toBeCloseTo(perMetre, 10);
      }),
      { seed },
    );
  });

  it('keeps natural and decimal logarithms apart', () => {
    expect(converted(1, 'optical-density-per-metre', 'extinction-per-metre')).toBeCloseTo(Math.LN10, 14);
    expect(converted(1, 'extinction-per-metre', 'decibels-per-metre')).toBeCloseTo(4.342944819032518, 14);
    expect(converted(1, 'optical-density-per-foot', 'optical-density-per-metre')).toBeCloseTo(1 / 0.3048, 14);
  });
});
