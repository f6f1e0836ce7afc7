import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { diagnoseBeams, type Finding } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import type { TruthFile } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';
import { tellsSmoke } from './simulated.js';

const stored = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../datasets/tram-depot/${name}`, import.meta.url)));
const truth: TruthFile = JSON.parse(stored('truth.json').toString());
const labels = truth.beams.flatMap(({ id, causes }) => causes.map((label) => ({ id, ...label })));

/** Findings of each beam. */
const found: Promise<ReadonlyMap<string, readonly Finding[]>> = (async () => {
  const site = parseSite(stored('site.json').toString());
  const { records } = await readTraces(logOfText(gunzipSync(stored('log.csv.gz')).toString()), site);
  return new Map(diagnoseBeams(records, site).map(({ id, findings }) => [id, findings]));
})();

const row = ({ id, cause, start, end }: (typeof labels)[number]) => [id, cause, start, end] as const;

/** Whether a label is stated; a step or a cleaning may be told an hour to either side. */
async function isStated(id: string, cause: string, start: string, end: string): Promise<boolean> {
  const [from, to] = [Date.parse(start), Date.parse(end)];
  const leeway = from === to ? 3_600_000 : 0;
  return ((await found).get(id) ?? []).some(
    (f) =>
      f.cause === cause &&
      (f.confidence >= 0.5 || cause === 'smoke-like') &&
      f.start <= to + leeway &&
      f.end >= from - leeway,
  );
}

describe('the tram depot, explained', () => {
  it.each(labels.map(row))('%s: %s of %s is stated', async (id, cause, start, end) =>
    expect(await isStated(id, cause, start, end)).toBe(true),
  );
  it('both fires are told as smoke, to be acted upon', async () => {
    const fires = labels.filter(({ cause }) => cause === 'smoke-like');
    expect(fires).toHaveLength(2);
    for (const { id, start, end } of fires) {
      const own = (await found).get(id) ?? [];
      expect(tellsSmoke(own, Date.parse(start), Date.parse(end))).toBe(true);
      const over = own.filter(
        (f) => f.cause === 'smoke-like' && f.start <= Date.parse(end) && f.end >= Date.parse(start),
      );
      expect(over.map(({ severity }) => severity)).toContain('act');
    }
  });
  // A mist that lifts quickly is in doubt smoke.
  it('states no cause of which a beam has none, but for one that is known', async () => {
    const wrong = [...(await found)].flatMap(([id, findings]) =>
      findings
        .filter((f) => f.confidence >= 0.5 || f.cause === 'smoke-like')
        .filter((f) => !labels.some((label) => label.id === id && label.cause === f.cause))
        .map((f) => `${id} ${f.cause}`),
    );
    expect(wrong).toEqual(['B4 smoke-like']);
  });
});
