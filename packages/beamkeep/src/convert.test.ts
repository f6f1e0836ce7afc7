import { describe, expect, it } from 'vitest';
import { units } from './attenuation/index.js';
import { UsageError } from './columns/index.js';
import { convert } from './convert.js';

describe('convert', () => {
  it('answers with the question beside the result', () => {
    const answer = convert({ value: 35, from: 'percent', to: 'decibels-per-metre', pathMetres: 50 });
    expect(Object.keys(answer)).toEqual(['value', 'from', 'to', 'path', 'result']);
    expect(answer).toMatchObject({ value: 35, from: 'percent', to: 'decibels-per-metre', path: 50 });
    expect(answer.result).toBeCloseTo(0.0374173, 7);
  });

  it('writes and reads darkness as "infinite"', () => {
    expect(convert({ value: 100, from: 'percent', to: 'decibels', pathMetres: 50 }).result).toBe('infinite');
    for (const value of ['infinite', Number.POSITIVE_INFINITY] as const) {
      expect(convert({ value, from: 'decibels', to: 'percent', pathMetres: 50 })).toEqual({
        value: 'infinite',
        from: 'decibels',
        to: 'percent',
        path: 50,
        result: 100,
      });
    }
  });

  it('survives JSON in every pair of units', () => {
    for (const from of units) {
      for (const to of units) {
        const answer = convert({ value: 0.5, from, to, pathMetres: 10 });
        expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
      }
    }
  });

  it('does without the path where it is not needed', () => {
    expect(convert({ value: 10, from: 'decibels', to: 'percent' })).toEqual({
      value: 10,
      from: 'decibels',
      to: 'percent',
      path: null,
      result: 90,
    });
  });

  it.each([
    [{ value: Number.NaN, from: 'percent', to: 'decibels' }, 'value NaN is not a number'],
    [{ value: 35, from: 'percents', to: 'decibels' }, 'from "percents" is not a unit: use transmittance'],
    [{ value: 35, from: 'percent', to: 'dB' }, 'to "dB" is not a unit: use transmittance'],
    [{ value: 35, from: 'percent', to: 'decibels-per-metre' }, 'the path is needed'],
    [{ value: 35, from: 'percent', to: 'decibels', pathMetres: 0 }, 'path 0 m must be more than 0'],
    [{ value: -35, from: 'percent', to: 'decibels' }, 'from 0 to 100'],
    [{ value: 'infinite' as const, from: 'percent', to: 'decibels' }, 'from 0 to 100'],
  ])('refuses %j', (question, message) => {
    expect(() => convert(question)).toThrow(UsageError);
    expect(() => convert(question)).toThrow(message);
  });
});
