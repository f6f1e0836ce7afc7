import { beforeAll, describe, expect, it } from 'vitest';
import { type BeamDiagnosis, diagnoseBeams } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { random } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';
import { stated } from './kit.js';

/** Six thousand samples of clean air, noise of 1 % in steps of half of one, begun seven seconds after a full minute. */
function noisyLog(seconds: number, onlyChanges: boolean): string {
  const { normal } = random(7);
  const start = Date.UTC(2027, 0, 4, 0, 0, 7);
  let before = '';
  const lines = Array.from({ length: 6000 }, (_, i) => {
    const read = (Math.round(2 * (100 + normal())) / 2).toFixed(1);
    const line = `${new Date(start + 1000 * seconds * i).toISOString()},${read}`;
    const held = read === before;
    before = read;
    return onlyChanges && held ? [] : [line];
  });
  return ['time,signal', ...lines.flat(), ''].join('\n');
}

const diagnosedAs = async (sampling: string, log: string): Promise<BeamDiagnosis> => {
  const beam = { id: 'B1', layout: 'reflective', separation: 30, signalColumn: 'signal', cleanAir: 100 };
  const site = { format: 'beamkeep-site/1', name: 'Tram depot (invented)', timeZone: 'UTC', sampling, beams: [beam] };
  const parsed = parseSite(JSON.stringify(site), 'site.json');
  const { records } = await readTraces(logOfText(log, 'log.csv'), parsed);
  return diagnoseBeams(records, parsed)[0] as BeamDiagnosis;
};

describe.each([10, 30, 45])('a log that looks every %i s and says a value when it changes', (seconds) => {
  let regular: BeamDiagnosis;
  let told: BeamDiagnosis;
  let changes: BeamDiagnosis;
  beforeAll(async () => {
    regular = await diagnosedAs('regular', noisyLog(seconds, false));
    told = await diagnosedAs('on-change', noisyLog(seconds, false));
    changes = await diagnosedAs('on-change', noisyLog(seconds, true));
  });
  const noise = ({ picture }: BeamDiagnosis): number => picture?.view.sampleNoise ?? Number.NaN;
  const rows = ({ picture }: BeamDiagnosis): number => picture?.view.trace.time.length ?? 0;

  it('holds about as many rows as samples were taken, though the reader says again what stood before a change', () => {
    expect(Math.abs(rows(told) / rows(regular) - 1)).toBeLessThan(0.02);
    expect(Math.abs(rows(changes) / rows(regular) - 1)).toBeLessThan(0.1);
  });
  it('is about as noisy as the same log said regularly', () => {
    expect(Math.abs(noise(told) / noise(regular) - 1)).toBeLessThan(0.1);
    expect(Math.abs(noise(changes) / noise(regular) - 1)).toBeLessThan(0.2);
  });
  it('grows no smoke out of noise', () => {
    expect([regular, told, changes].flatMap((diagnosis) => stated(diagnosis, 'smoke-like'))).toEqual([]);
  });
});
