import { describe, expect, it } from 'vitest';
import { counted, figure, plural } from './numbers.js';

describe('figure', () => {
  it.each([
    [0, '0'],
    [-0.11, '-0.11'],
    [0.0633333, '0.0633'],
    [7.1234, '7.12'],
    [71.234, '71.2'],
    [100, '100'],
    [999.6, '1000'],
    [1234.5, '1 235'],
    [-172800, '-172 800'],
    [1.5e-9, '1.50e-9'],
    [Number.POSITIVE_INFINITY, 'infinite'],
    [Number.NEGATIVE_INFINITY, '-infinite'],
    [Number.NaN, 'not known'],
  ])('%f is told as %s', (value, told) => expect(figure(value)).toBe(told));
});

describe('counted and plural', () => {
  it('groups by three', () => expect(counted(1234567)).toBe('1 234 567'));
  it('knows one', () => expect(plural(1, 'line')).toBe('1 line'));
  it('knows many', () => expect(plural(0, 'line')).toBe('0 lines'));
});
