import { readFile } from 'node:fs/promises';
import { parseSite, type Site } from 'beamkeep';
import { type CommissioningRecord, parseRecord } from 'beamkeep/commissioning';
import { beforeAll, describe, expect, it } from 'vitest';
import type { SmallFile } from './reading.js';
import { type BeamWork, type RecordAsked, recordTold } from './recordTold.js';

const depot = new URL('../../../datasets/tram-depot/', import.meta.url);
const file = async (name: string): Promise<SmallFile> => ({
  name,
  text: await readFile(new URL(name, depot), 'utf8'),
});

let site: Site;
let scan: SmallFile;
let test: SmallFile;
beforeAll(async () => {
  site = parseSite((await file('site.json')).text);
  scan = await file('commissioning/scan-b1.csv');
  test = await file('commissioning/covered-b1.csv');
});

const day: RecordAsked['day'] = { format: 'beamkeep-day/1', site: 'site.json', date: '2027-01-20', beams: [] };
const gathered = async (work: readonly BeamWork[]): Promise<CommissioningRecord> =>
  parseRecord((await recordTold({ day, work, findings: null, log: null, made: 0 }, site)).json);

describe('recordTold', () => {
  it('gathers what the cells hold, each beam for itself', async () => {
    const { beams } = await gathered([
      { number: 4, kind: 'aim', beam: 'B1', scan, left: [0.5], structure: { spanMetres: 18, heightMetres: 9.4 } },
      { number: 5, kind: 'covered', beam: 'B1', test },
    ]);
    expect(beams.map(({ id, aim, covered }) => [id, aim?.verdict, covered?.verdict])).toEqual([
      ['B1', 'look again', 'fit'],
      ['B2', undefined, undefined],
      ['B3', undefined, undefined],
      ['B4', undefined, undefined],
    ]);
    expect(beams[0]?.aim?.movement).toHaveLength(3);
  });

  it('tells a test that cannot be used, by the number of its cell, and counts it as missing', async () => {
    const { attention, missing } = await gathered([{ number: 7, kind: 'covered', beam: 'B1', test: scan }]);
    expect(attention.map(({ words }) => words).join()).toMatch(/covered test of cell 7: could not be used/);
    expect(missing).toContainEqual({ beam: 'B1', words: 'covered test: not there' });
  });

  it('takes the lower of two, and says so', async () => {
    const { beams, attention } = await gathered([
      { number: 4, kind: 'aim', beam: 'B1', scan, left: [0.5], structure: {} },
      { number: 5, kind: 'aim', beam: 'B1', scan, left: [0], structure: {} },
    ]);
    expect(beams[0]?.aim?.left?.at).toEqual([0]);
    expect(attention.map(({ words }) => words)).toContain(
      'aim scan of cell 4: left out, for a lower cell holds another of this beam.',
    );
  });
});
