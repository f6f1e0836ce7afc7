import { parseSite } from 'beamkeep';
import { hour, second } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { canBeRefined, rawFile } from './rawSamples.js';

const site = parseSite({ beams: [{ id: 'a', layout: 'reflective', separation: 50, signalColumn: 'b1' }] });
const start = Date.UTC(2027, 0, 4);

/** A day of seconds; the level tells the second within its minute. */
const lines = Array.from(
  { length: 86_400 },
  (_, i) => `${new Date(start + i * second).toISOString()},${100 - (i % 60) / 10}`,
);
const blob = new Blob([`time,b1\n${lines.join('\n')}\n`]);

describe('rawFile', () => {
  it('finds every sample of a window, wherever it lies', async () => {
    const file = rawFile({ name: 'day.csv', blob }, site);
    for (const at of [0, 7, 13.37, 23.9]) {
      const from = start + at * hour;
      const samples = (await file.samples({ from, to: from + 60 * second }))?.get('a');
      const inside = [...(samples?.time ?? [])].filter((time) => time >= from && time <= from + 60 * second);
      expect(inside.length).toBe(61);
      const row = samples?.time.indexOf(from) ?? -1;
      expect(samples?.level[row]).toBeCloseTo(1 - ((at * 3600) % 60) / 1000, 9);
    }
  });

  it('answers a window inside the last one without reading again', async () => {
    const file = rawFile({ name: 'day.csv', blob }, site);
    const wide = file.samples({ from: start + hour, to: start + 2 * hour });
    expect(file.samples({ from: start + 1.2 * hour, to: start + 1.8 * hour })).toBe(wide);
  });

  it('says nothing where the file cannot be read in pieces', async () => {
    const file = rawFile({ name: 'poem.csv', blob: new Blob(['time,b1\nroses,red\nviolets,blue\n']) }, site);
    expect(await file.samples({ from: start, to: start + hour })).toBeUndefined();
  });
});

describe('canBeRefined', () => {
  it('not where the level depends on the whole log, nor where values hold', () => {
    const beam = { id: 'a', layout: 'reflective', separation: 50, signalColumn: 'b1' };
    expect(canBeRefined(site)).toBe(true);
    expect(canBeRefined(parseSite({ beams: [{ ...beam, signalUnit: 'counts' }] }))).toBe(false);
    expect(canBeRefined(parseSite({ sampling: 'on-change', beams: [beam] }))).toBe(false);
  });
});
