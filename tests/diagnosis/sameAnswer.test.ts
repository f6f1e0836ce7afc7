import { describe, expect, it } from 'vitest';
import { type BeamRecord, day } from '../../packages/beamkeep/src/columns/index.js';
import { type CauseWord, diagnoseBeams, type Finding } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { diagnosed, iso, siteOf } from './kit.js';
import { typical } from './typical.js';

const tried: readonly CauseWord[] = [
  'contamination',
  'misalignment-step',
  'building-movement',
  'condensation',
  'process-aerosol',
  'ambient-light',
  'obstruction',
  'smoke-like',
];
const shapes = (findings: readonly Finding[]) =>
  findings.map(({ cause, start, end, ongoing, severity }) => [cause, iso(start), iso(end), ongoing, severity]);

/** Ways of writing a share of clean air. */
const units: Readonly<Record<string, { readonly of: (level: number) => string; readonly beam: object }>> = {
  percent: { of: (x) => (100 * x).toFixed(5), beam: {} },
  obscuration: { of: (x) => (100 * (1 - x)).toFixed(5), beam: { signalUnit: 'obscuration' } },
  counts: { of: (x) => (52_000 * x + 800).toFixed(2), beam: { signalUnit: 'counts', cleanAir: 52_800, covered: 800 } },
  decibels: { of: (x) => (10 * Math.log10(x)).toFixed(7), beam: { signalUnit: 'decibels' } },
};

async function inUnit({ trace }: BeamRecord, unit: string): Promise<readonly Finding[]> {
  const { of, beam } = units[unit] ?? { of: String, beam: {} };
  const lines = [...trace.time].map((t, i) => `${iso(t)},${of(trace.level[i] ?? Number.NaN)}`);
  const site = siteOf(beam);
  const { records } = await readTraces(logOfText(`time,b1\n${lines.join('\n')}\n`), site);
  return diagnoseBeams(records, site)[0]?.findings ?? [];
}

describe('the same light gives the same findings', () => {
  it.each(tried)('%s in percent, obscuration, counts or decibels', async (cause) => {
    const record = typical[cause]();
    const percent = await inUnit(record, 'percent');
    expect(percent.some((f) => f.cause === cause)).toBe(true);
    for (const unit of ['obscuration', 'counts', 'decibels']) {
      const other = await inUnit(record, unit);
      expect([unit, shapes(other)]).toEqual([unit, shapes(percent)]);
      other.forEach((f, k) => {
        expect(Math.abs(f.confidence - (percent[k]?.confidence ?? 0))).toBeLessThan(0.02);
      });
    }
  });
  it.each(tried)('%s some whole weeks later, at a site that keeps UTC', (cause) => {
    const record = typical[cause]();
    const weeks = 23 * 7 * day;
    const time = record.trace.time.map((t) => t + weeks);
    const later = diagnosed({ ...record, trace: { ...record.trace, time, until: time } });
    const back = later.findings.map((f) => ({
      ...f,
      start: f.start - weeks,
      end: f.end - weeks,
      ...(f.episodes === undefined ? {} : { episodes: f.episodes.map(([a, b]) => [a - weeks, b - weeks]) }),
    }));
    expect(back).toEqual(diagnosed(record).findings);
  });
});
