import { beforeAll, describe, expect, it } from 'vitest';
import { type BeamDiagnosis, diagnoseBeams } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { random } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';

/** Two days of clean air, a line every ten seconds, noise of 1 % in steps of half of one. */
function noisyLog(): string {
  const { normal } = random(7);
  const start = Date.UTC(2027, 0, 4);
  const lines = Array.from({ length: 2 * 8640 }, (_, i) => {
    const read = Math.round(2 * (100 + normal())) / 2;
    return `${new Date(start + 10_000 * i).toISOString()},${read.toFixed(1)}`;
  });
  return ['time,signal', ...lines, ''].join('\n');
}

const diagnosedAs = async (sampling: string): Promise<BeamDiagnosis> => {
  const beam = { id: 'B1', layout: 'reflective', separation: 30, signalColumn: 'signal', cleanAir: 100 };
  const site = parseSite(
    JSON.stringify({
      format: 'beamkeep-site/1',
      name: 'Tram depot (invented)',
      timeZone: 'UTC',
      sampling,
      beams: [beam],
    }),
    'site.json',
  );
  const { records } = await readTraces(logOfText(noisyLog(), 'log.csv'), site);
  return diagnoseBeams(records, site)[0] as BeamDiagnosis;
};

describe('a quick log that says a value when it changes', () => {
  let regular: BeamDiagnosis;
  let onChange: BeamDiagnosis;
  beforeAll(async () => {
    regular = await diagnosedAs('regular');
    onChange = await diagnosedAs('on-change');
  });

  it('holds each sample once, though the reader says again what stood just before a change', () => {
    expect(onChange.picture?.view.trace.time.length).toBe(regular.picture?.view.trace.time.length);
  });
  it('is as noisy as the same log said regularly', () => {
    expect(onChange.picture?.view.sampleNoise).toBe(regular.picture?.view.sampleNoise);
  });
  it('grows no smoke out of noise', () => {
    expect([regular, onChange].flatMap(({ findings }) => findings.map(({ cause }) => cause))).toEqual([]);
  });
});
