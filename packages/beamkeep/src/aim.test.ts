import { describe, expect, it } from 'vitest';
import { depot, tableOf } from '../../../tests/commissioning/demo.js';
import { aim } from './aim.js';
import { textTable } from './log/index.js';

/* Asked of the demonstration files of the commissioning day, whose truth is known: see their README. */

describe('aim', () => {
  it('B1 was left half a degree off its peak', async () => {
    const answer = aim(await tableOf('scan-b1.csv'), await depot(), { beam: 'B1', left: [0.5] });
    expect(answer).toMatchObject({ format: 'beamkeep-aim/1', beam: 'B1', verdict: 'look again', flags: [] });
    expect(answer.left?.offset[0]?.value).toBeCloseTo(0.5, 2);
    expect(answer.left?.loss.value).toBeCloseTo(3.0103 * (0.5 / 0.7) ** 2, 1);
    expect(answer.fit.halfAngle[0]?.value).toBeCloseTo(0.7, 2);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  it('B2, over two axes, stands on its peak', async () => {
    const answer = aim(await tableOf('scan-b2.csv'), await depot(), { beam: 'B2', left: [0.05, -0.05] });
    expect(answer).toMatchObject({ axes: ['pan', 'tilt'], verdict: 'good' });
    expect(answer.fit.covariance).toHaveLength(6);
  });
  it('B3 has a stray reflection at 1.5 degrees', async () => {
    const answer = aim(await tableOf('scan-b3.csv'), await depot(), { beam: 'B3', left: [0.05] });
    expect(answer.flags.map(({ kind, at }) => [kind, at?.[0]])).toEqual([['second-peak', expect.closeTo(1.5, 1)]]);
    expect(answer.flags[0]?.words).toContain('stray reflection');
  });
  it('takes millimetres at the far end for angles, of the scan and of the place where it was left', async () => {
    const site = await depot();
    const { names, rows } = await tableOf('scan-b1.csv');
    const far = (angle: number) => 62_000 * Math.tan((angle * Math.PI) / 180);
    const lines = rows.map(({ cells: [angle, level] }) => `${far(Number(angle))},${level}`);
    const table = textTable(`${names.join()}\n${lines.join('\n')}\n`, 'mm.csv');
    const answer = aim(table, site, { beam: 'B1', left: [far(0.5)], angleUnit: 'millimetres' });
    expect(answer.left?.offset[0]?.value).toBeCloseTo(0.5, 2);
  });
  it('asks which beam', async () => {
    const site = await depot();
    const table = await tableOf('scan-b1.csv');
    expect(() => aim(table, site)).toThrow('name one of B1, B2, B3, B4 (--beam)');
  });
});
