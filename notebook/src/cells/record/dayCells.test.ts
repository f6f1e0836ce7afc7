import { readFile } from 'node:fs/promises';
import { parseDay } from 'beamkeep/commissioning';
import { describe, expect, it } from 'vitest';
import { dayCells } from './dayCells.js';
import { dayOf } from './dayOf.js';

const folder = new URL('../../../../datasets/tram-depot/commissioning/', import.meta.url);
const file = async (name: string) => ({ name, text: await readFile(new URL(name, folder), 'utf8') });

describe('dayCells', () => {
  it('makes cells of the depot’s day, and loses nothing that people wrote', async () => {
    const day = parseDay((await file('day.json')).text);
    const { tests, written } = await dayCells(day, file);
    expect(tests.map(({ kind }) => kind).join(' ')).toBe(
      'aim aim aim aim covered covered covered covered proof proof proof',
    );
    expect(tests[0]?.settings).toMatchObject({ structure: { span: '18', frame: '9.4' } });
    const { people, impairment, deviations, notDone, remarks, date } = day;
    expect(dayOf(written)).toMatchObject({ people, impairment, deviations, notDone, remarks, date });
  });
});
