import { describe, expect, it } from 'vitest';
import { depot, log } from '../../../tests/commissioning/demo.js';
import { covered } from './covered.js';
import { logOfText } from './log/index.js';
import { parseSite } from './site/index.js';

/* Asked of the demonstration files of the commissioning day, whose truth is known: see their README. */

describe('covered', () => {
  it('B1 is fit, and its site file is right', async () => {
    const answer = await covered(await log('covered-b1.csv'), await depot(), { beam: 'B1' });
    expect(answer).toMatchObject({ format: 'beamkeep-covered/1', verdict: 'fit', ratioOfSiteFile: 0.004 });
    expect(answer.ratio.low).toBeLessThan(0.004);
    expect(answer.ratio.high).toBeGreaterThan(0.004);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  it('the head of B2 was touched: its clean reading fell by 3.5 %', async () => {
    const answer = await covered(await log('covered-b2.csv'), await depot(), { beam: 'B2' });
    expect(answer.drift?.tells).toBe(true);
    expect(answer.drift?.percent).toBeCloseTo(-3.5, 0);
  });
  it('reads a log on change as what held between its lines', async () => {
    const lines = ['10:00:00,100', '10:00:20,100.1', '10:00:40,5', '10:01:20,5.1', '10:01:40,99.9', '10:02:40,100'];
    const csv = `time,b1\n${lines.map((line) => `2027-01-20T${line.replace(',', 'Z,')}`).join('\n')}\n`;
    const site = parseSite({
      sampling: 'on-change',
      beams: [{ id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1' }],
    });
    const answer = await covered(logOfText(csv), site);
    expect(answer.ratio.value).toBeCloseTo(0.05, 2);
    expect(answer.covered.samples).toBeGreaterThan(40);
  });
  it('is the same whatever unit the beam is logged in', async () => {
    const power = [...Array(40).fill(1), ...Array(40).fill(0.2), ...Array(40).fill(1)].map(
      (level, row) => level * (1 + 0.002 * Math.sin(row * row)),
    );
    const ratios = await Promise.all(
      (
        [
          ['percent', (p: number) => 100 * p],
          ['obscuration', (p: number) => 100 - 100 * p],
          ['counts', (p: number) => 2310 * p],
          ['decibels', (p: number) => 10 * Math.log10(p)],
        ] as const
      ).map(async ([signalUnit, said]) => {
        const rows = power.map((p, row) => `${1.8e9 + row},${said(p).toFixed(6)}`);
        const site = parseSite({
          beams: [
            { id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1', signalUnit, cleanAir: said(1) },
          ],
        });
        return (await covered(logOfText(`time,b1\n${rows.join('\n')}\n`), site)).ratio.value;
      }),
    );
    for (const ratio of ratios) expect(ratio).toBeCloseTo(0.2, 3);
  });
});
