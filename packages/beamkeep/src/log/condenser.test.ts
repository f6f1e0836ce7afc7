import { describe, expect, it } from 'vitest';
import { Condenser } from './condenser.js';

const second = 1000;
/** Ten minutes at 1 s: quiet, but for one spike in the fifth. */
const time = Float64Array.from({ length: 600 }, (_, row) => row * second);
const quiet = time.map((_, row) => 100 + (row % 3) / 10);
const spiky = quiet.map((value, row) => (row === 270 ? 40 : value));

function condensed(thresholds: readonly number[] = [], columns = [quiet, spiky]): Condenser {
  const condenser = new Condenser(
    60 * second,
    columns.map(() => ({ step: 0.1, thresholds })),
    1e6,
    1e6,
  );
  condenser.add(time, columns, 0, time.length);
  condenser.end();
  return condenser;
}

describe('Condenser', () => {
  it('one bucket a minute a beam', () => expect(condensed().buckets.map(({ length }) => length)).toEqual([10, 10]));
  it('keeps the samples of an eventful minute and of those around it', () => {
    const { buckets, time: kept } = condensed().kept;
    expect(buckets.map(({ beam, bucket, count }) => [beam, bucket, count])).toEqual([
      [1, 3, 60],
      [1, 4, 60],
      [1, 5, 60],
    ]);
    expect(kept[buckets[1]?.from ?? 0]).toBe(240_000);
  });
  it('a beam that stands at its threshold is watched sample by sample', () => {
    const { kept } = condensed([100.15], [quiet]);
    expect(kept.buckets).toHaveLength(10);
  });
  it('a beam without a value in a minute has no bucket there', () => {
    const gap = quiet.map((value, row) => (row >= 120 && row < 180 ? Number.NaN : value));
    expect(condensed([], [gap]).buckets[0]?.length).toBe(9);
  });
});
