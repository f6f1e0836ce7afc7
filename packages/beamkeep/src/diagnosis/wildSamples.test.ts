import { describe, expect, it } from 'vitest';
import { at, left, pictured, recordOf, rise } from '../../../../tests/diagnosis/kit.js';
import { second } from '../columns/index.js';
import { swingsBack } from './wildSamples.js';

/** Whether the deepest dip of an hour, sampled so often, swings back. */
function deepestSwingsBack(level: (t: number) => number, intervalSeconds: number, noise = 0.001): boolean {
  const picture = pictured(recordOf(level, { days: 1 / 24, intervalSeconds, noise }));
  const [deepest] = picture.excursions.filter(({ sign }) => sign === 1).sort((a, b) => b.depth - a.depth);
  if (deepest === undefined) throw new Error('no dip was found');
  return swingsBack(picture, deepest);
}

/** Grows over a minute, swings to both sides from before that until after it, and goes within so many seconds. */
const dip =
  (goes: number, swing = 0.05) =>
  (t: number) => {
    const [start, top] = [at(0, 0.5), at(0, 0.5) + 60 * second];
    const shakes = t > start - 300 * second && t < top + 300 * second;
    const grown = 1.2 * rise(t, start, top) * (1 - rise(t, top, top + goes * second));
    return left(1 + grown + (shakes ? swing * Math.sin((2 * Math.PI * (t - start)) / (1.7 * second)) : 0));
  };

describe('a dip that swings back', () => {
  it('stands among samples that swing to both sides, and is gone within two seconds', () =>
    expect(deepestSwingsBack(dip(1), 0.5)).toBe(true));
  it('is not one that clears over half a minute', () => expect(deepestSwingsBack(dip(30), 0.5)).toBe(false));
  it('is not told from a log that looks every ten seconds', () => expect(deepestSwingsBack(dip(1), 10)).toBe(false));
  it('is not one that grew among calm samples, however fast it goes', () =>
    expect(deepestSwingsBack(dip(1, 0), 0.5)).toBe(false));
});
