import { changePoints, mean, segmentation } from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, dataFile, parityCase } from './published.js';

describe('changePoints', () => {
  const { inputs, results } = parityCase<{ values: number[] }, Record<string, { ends: number[]; cost: number }>>(
    'change points in the mean, squared error',
  );
  for (const [name, { ends, cost }] of Object.entries(results)) {
    it(`exact dynamic programming, ends as ruptures KernelCPD(linear): ${name}`, () => {
      const penalty = Number(name.replace('penalty ', ''));
      const found = segmentation(inputs.values, { penalty, scale: 1, cost: 'l2' });
      expect([...found.changes, inputs.values.length]).toEqual(ends);
      expect(found.cost).toBeCloseTo(cost, 7); // the reference sums squares of 100: 3e6 leaves it eight places
    });
  }

  for (const { id, expected, tolerance, source } of casesOf('level-step')) {
    it(`${id}: ${source}`, () => {
      const { year, volume } = dataFile('nile.csv') as { year: Float64Array; volume: Float64Array };
      const rows = changePoints(volume, { penalty: 2 * Math.log(100), scale: 130 });
      expect(rows).toHaveLength(1);
      const row = rows[0] as number;
      const found = {
        lastBefore: year[row - 1],
        firstAfter: year[row],
        meanBefore: mean(volume.subarray(0, row)),
        meanAfter: mean(volume.subarray(row)),
      };
      expectWithin(found, expected, tolerance);
    });
  }
});
