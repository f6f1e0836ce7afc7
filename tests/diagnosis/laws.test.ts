import { describe, expect, it } from 'vitest';
import { type CauseWord, causeWords, type Finding } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText } from '../../packages/beamkeep/src/log/index.js';
import { respond } from '../../packages/beamkeep/src/respond.js';
import { scenarioAt } from '../../packages/beamkeep/src/simulation/index.js';
import { type Explained, explained, smokeLabelled, smokeLost } from './simulated.js';

/*
 * What holds of every diagnosis, tried on simulated logs of all kinds. The seeds are fixed: none of them is left out.
 */

const seeds = Array.from({ length: 70 }, (_, k) => k);
const options = { ranges: 'held-out', budget: 8000 } as const;

const all: Promise<Explained[]> = (async () => {
  const made: Explained[] = [];
  for (const k of seeds) {
    const { scenario, seed } = scenarioAt(20_270, k, options);
    made.push(await explained(scenario, seed));
  }
  return made;
})();

const everyBeam = async () =>
  (await all).flatMap(({ diagnoses, records, site }) =>
    diagnoses.map((d) => ({ ...d, site, record: records.find(({ id }) => id === d.id) })),
  );
const pairs = (findings: readonly Finding[], cause: CauseWord): [Finding, Finding][] => {
  const own = findings.filter((f) => f.cause === cause).sort((a, b) => a.start - b.start);
  return own.slice(1).map((f, k) => [own[k] as Finding, f]);
};

describe('laws of every diagnosis', () => {
  it('two findings of one cause on a beam never overlap', async () => {
    const overlaps = (await everyBeam()).flatMap(({ id, findings, site }) =>
      causeWords.flatMap((cause) =>
        pairs(findings, cause)
          // A held value and the gap after it share a sample by the format.
          .filter(([one, next]) => next.start < one.end || (next.start === one.end && cause !== 'data-gap'))
          .map(([one, next]) => `${site.name} ${id} ${cause} ${one.end} ${next.start}`),
      ),
    );
    expect(overlaps).toEqual([]);
  });
  it('contamination ends at each cleaning that is stated', async () => {
    const across = (await everyBeam()).flatMap(({ id, findings }) =>
      findings
        .filter((f) => f.cause === 'cleaned')
        .filter(({ start }) => findings.some((d) => d.cause === 'contamination' && d.start < start && d.end >= start))
        .map(({ start }) => `${id} ${start}`),
    );
    expect(across).toEqual([]);
  });
  it('findings start and end at samples, start first, and only what reaches the last sample goes on', async () => {
    for (const { findings, record, to } of await everyBeam()) {
      const samples = new Set([...(record?.trace.time ?? []), ...(record?.trace.until ?? [])]);
      for (const f of findings) {
        expect(f.start).toBeLessThanOrEqual(f.end);
        expect(samples.has(f.start) && samples.has(f.end), `${f.cause} ${f.start} ${f.end}`).toBe(true);
        if (f.ongoing) expect(f.end).toBe(to);
      }
    }
  });
  it('every loss that the equipment would call fire is told as smoke, to be acted upon', async () => {
    let told = 0;
    for (const { text, site, diagnoses } of await all) {
      const beams = site.beams.map((beam) => ({ ...beam, latching: false, hysteresis: 0 }));
      const { beams: answers } = await respond(logOfText(text), { ...site, beams });
      for (const { id, changes } of answers) {
        const diagnosis = diagnoses.find((d) => d.id === id);
        const delay = 1000 * (site.beams.find((beam) => beam.id === id)?.alarmDelay ?? 0);
        changes.forEach(({ time, state }, k) => {
          if (state !== 'fire') return;
          told++;
          const next = changes[k + 1]?.time;
          const [from, to] = [Date.parse(time) - delay, next === undefined ? (diagnosis?.to ?? 0) : Date.parse(next)];
          const over =
            diagnosis?.findings.filter((f) => f.cause === 'smoke-like' && f.start <= to && f.end >= from) ?? [];
          expect(over.length, `${id} ${time}`).toBeGreaterThan(0);
          for (const { severity } of over) expect(severity).toBe('act');
          const seen = over.reduce((sum, f) => sum + Math.min(f.end, to) - Math.max(f.start, from), 0);
          const interval = 2000 * (diagnosis?.picture?.view.record.intervalSeconds ?? 0);
          expect(seen).toBeGreaterThanOrEqual(to - from - interval - delay);
        });
      }
    }
    expect(told).toBeGreaterThan(0);
  });
  it('every smoke that the simulation labels is told', async () => {
    const logs = await all;
    expect(logs.reduce((n, log) => n + smokeLabelled(log), 0)).toBeGreaterThan(0);
    expect(logs.flatMap(smokeLost)).toEqual([]);
  });
});
