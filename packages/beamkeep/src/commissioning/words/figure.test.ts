import { describe, expect, it } from 'vitest';
import { figure, listed, printed } from './figure.js';

describe('figure', () => {
  it.each([
    [57.749, '57.7'],
    [0, '0'],
    [-0.0001, '-0.0001'],
    [1234.5, '1235'],
    [0.5, '0.5'],
    [2.21e-9, '0'],
    [Number.NaN, 'not known'],
    [Number.POSITIVE_INFINITY, 'never'],
  ])('%f is "%s"', (value, text) => expect(figure(value)).toBe(text));
  it('never shows a negative nothing', () => expect(figure(-1e-22)).toBe('0'));
});

describe('listed', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
  ])('%j is "%s"', (words, text) => expect(listed(words)).toBe(text));
});

it('in print a minus is no hyphen, and a hyphen no minus', () =>
  expect(printed('-1 dB (-2 to 0), at -0.5: end-to-end, 2027-01-09')).toBe(
    '−1 dB (−2 to 0), at −0.5: end-to-end, 2027-01-09',
  ));
