import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { respondTo } from '../../../packages/beamkeep/src/response/index.js';
import { parseSite } from '../../../packages/beamkeep/src/site/index.js';

/*
 * Measured smoke, replayed through the response: whatever of it holds past the threshold is fire, none of it a blocked
 * beam. Source: FAA light beams (DOT/FAA/AR-03/49), Fire Research Division Experimental Database; transmission in % per
 * metre, `(value/100)^L`.
 */

const folder = new URL('../../../datasets/measured/', import.meta.url);
const site = parseSite({
  format: 'beamkeep-site/1',
  name: 'measured smoke',
  beams: [{ id: 'B', layout: 'end-to-end', separation: 10, signalColumn: 'b' }],
});
const [beam] = site.beams;

const curves = readdirSync(folder)
  .filter((name) => name.startsWith('faa-'))
  .flatMap((name) => {
    const [head = '', ...lines] = readFileSync(new URL(name, folder), 'utf8').trim().split('\n');
    const cells = lines.map((line) => line.split(',').map((cell) => (cell === '' ? Number.NaN : Number(cell))));
    const time = Float64Array.from(cells, (row) => (row[0] ?? Number.NaN) * 1000);
    return head
      .split(',')
      .slice(1)
      .map((column, i) => ({
        name: `${name} ${column}`,
        time,
        perMetre: Float64Array.from(cells, (row) => Math.min(1, (row[i + 1] ?? Number.NaN) / 100)),
      }));
  });

describe('measured smoke through the response', () => {
  it('there are sixteen light beams', () => expect(curves).toHaveLength(16));

  it.each(curves.map((curve) => [curve.name, curve] as const))(
    '%s: fire or nothing, never fault',
    (_, { time, perMetre }) => {
      if (beam === undefined) throw new Error('no beam');
      for (const metres of [1, 3, 10, 20, 50]) {
        const level = perMetre.map((share) => share ** metres);
        const intervalSeconds = ((time[1] ?? 0) - (time[0] ?? 0)) / 1000;
        const { changes } = respondTo(beam, { time, level }, { sampling: 'regular', intervalSeconds, resets: [] });
        expect(changes.filter(({ state }) => state === 'fault')).toEqual([]);
        const runs = [...level].map((share) => share <= 0.65);
        const hold = Math.ceil(10 / intervalSeconds);
        const held = runs.some((_, i) => i >= hold && runs.slice(i - hold, i + 1).every(Boolean));
        expect(changes.some(({ state }) => state === 'fire')).toBe(held);
      }
    },
  );

  it('a longer stretch of the same smoke is never later', () => {
    if (beam === undefined) throw new Error('no beam');
    for (const { time, perMetre } of curves) {
      const alarms = [1, 3, 10, 20].map((metres) => {
        const level = perMetre.map((share) => share ** metres);
        const { changes } = respondTo(beam, { time, level }, { sampling: 'regular', intervalSeconds: 2, resets: [] });
        return changes.find(({ state }) => state === 'fire')?.time ?? Number.POSITIVE_INFINITY;
      });
      expect(alarms).toEqual([...alarms].sort((a, b) => b - a));
    }
  });
});
