import { describe, expect, it } from 'vitest';
import { at, chanceOf, diagnosed, left, pictured, recordOf, stated } from '../../../../../tests/diagnosis/kit.js';
import { day, hour, minute } from '../../columns/index.js';
import { ditherings } from './dithering.js';

const begins = at(12, 11);
const sampled = { days: 20, intervalSeconds: 300 };
/** Level with so many dB lost from an instant on, and samples that spread by so many from an instant on. */
const level =
  (lost: number, spread: number, spreads = begins) =>
  (t: number) =>
    left((t < begins ? 0 : lost) + (t < spreads ? 0 : spread * (chanceOf(t / minute, 5) - 0.5)));
const found = (lost: number, spread: number, spreads?: number) =>
  ditherings(pictured(recordOf(level(lost, spread, spreads), sampled)));

describe('ditherings', () => {
  it('finds light that is lost between two samples, which spread from then on: where, how long and how much', () => {
    const [one, other] = found(0.8, 0.4);
    expect(other).toBeUndefined();
    expect(Math.abs((one?.start ?? 0) - begins)).toBeLessThan(hour / 2);
    expect((one?.end ?? 0) - begins).toBeGreaterThan(7 * day);
    expect(one?.lost).toBeCloseTo(1 - left(0.8), 1);
  });
  it('finds none where the head was knocked and the samples are as even as before', () =>
    expect(found(0.8, 0)).toEqual([]));
  it('finds none in noise that takes no light, nor in noise that comes days after the loss', () => {
    expect(found(0, 0.4)).toEqual([]);
    expect(found(0.8, 0.4, begins + 2 * day)).toEqual([]);
  });
  it('finds none where the loss is under that of the smoke rule', () => expect(found(0.1, 0.1)).toEqual([]));
  it('is told as smoke, to be acted upon while it lasts', () =>
    expect(stated(diagnosed(recordOf(level(0.8, 0.4), sampled)), 'smoke-like')).toEqual([
      expect.objectContaining({
        severity: 'act',
        ongoing: true,
        summary: expect.stringMatching(/samples spread.*treat as fire/),
      }),
    ]));
});
