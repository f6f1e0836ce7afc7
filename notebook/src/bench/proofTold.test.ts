import { readFile } from 'node:fs/promises';
import { parseSite } from 'beamkeep';
import { beforeAll, describe, expect, it } from 'vitest';
import { planTold, proofTold } from './proofTold.js';
import type { SmallFile } from './reading.js';

const depot = new URL('../../../datasets/tram-depot/', import.meta.url);
const file = async (name: string): Promise<SmallFile> => ({
  name,
  text: await readFile(new URL(name, depot), 'utf8'),
});

let site = parseSite({
  format: 'beamkeep-site/1',
  name: 'Hall',
  beams: [{ id: 'B2', layout: 'reflective', separation: 40 }],
});
const asked = { beam: 'B2', sheet: null, times: [] };
beforeAll(async () => {
  site = parseSite((await file('site.json')).text);
});

describe('planTold', () => {
  it('gives the usual steps of the beam, what they must show, and the cautions', () => {
    const { plan, mustShow, cautions } = planTold(asked, site);
    expect(plan.steps.map((step) => step.do)).toContain('cover-at-once');
    expect(mustShow).toHaveLength(plan.steps.length);
    expect(cautions[0]?.words).toMatch(/out of service/);
  });

  it('takes over the times that were written down, and those alone', () => {
    const { plan } = planTold({ ...asked, times: ['', '', '', '', '2027-01-20T11:53:20'] }, site);
    expect(plan.sheet.steps[4]).toEqual({ do: 'reset', time: '2027-01-20T11:53:20' });
    expect(plan.sheet.steps[0]).not.toHaveProperty('time');
  });

  it('refuses a sheet of another beam in words', async () => {
    const sheet = await file('commissioning/proof-b1.sheet.json');
    expect(() => planTold({ ...asked, sheet }, site)).toThrow(/is a sheet of beam B1: choose that beam/);
  });
});

describe('proofTold', () => {
  it('finds the failing step of the depot, with the panel’s list and its clock', async () => {
    const { proof, verdict } = await proofTold(
      {
        beam: 'B2',
        times: [],
        sheet: await file('commissioning/proof-b2.sheet.json'),
        test: await file('commissioning/proof-b2.csv'),
        events: await file('commissioning/events.csv'),
        clockOffsetSeconds: 140,
      },
      site,
    );
    expect(verdict).toBe('fail');
    expect(proof.panelList).toBe(true);
    expect(proof.steps.map((step) => step.verdict).indexOf('fail')).toBe(5);
  });
});
