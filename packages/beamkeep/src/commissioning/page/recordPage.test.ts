import { describe, expect, it } from 'vitest';
import { gathered, siteOf } from '../../../../../tests/commissioning/answers.js';
import { itemsOf, textOf } from '../../../../../tests/commissioning/readPage.js';
import { recordPage } from './recordPage.js';

describe('recordPage', () => {
  it('heads with the site, the day and when it was made by the clock of the site', () => {
    const page = recordPage(gathered());
    expect(page).toContain('<title>Commissioning record: Depot, 2027-01-20</title>');
    expect(textOf(page)).toContain(
      'Depot. Work of 2027-01-20; made 2027-01-20 15:00:00 (Europe/Lisbon); form beamkeep-record/1.',
    );
    expect(recordPage(gathered(undefined, undefined, { date: '' }))).toContain(
      '<title>Commissioning record: Depot</title>',
    );
  });
  it('lists deviations, what was not done, remarks; a gap where nothing is written', () => {
    const page = recordPage(
      gathered(undefined, undefined, { deviations: ['one'], notDone: ['two'], remarks: ['three'] }),
    );
    expect(itemsOf(page)).toEqual(expect.arrayContaining(['one', 'two', 'three']));
    expect(page).toContain('<b>three</b>');
    const words = textOf(recordPage(gathered()));
    expect(words).toContain('Deviations none written down Not done nothing written down');
    expect(words).toContain('lift'); // work at height, among the cautions
  });
  it('has a part for every beam, in the order of the site, then the signatures', () => {
    const page = recordPage(gathered(siteOf({}, {})));
    const heads = [...page.matchAll(/<h2>([^<]*)<\/h2>/g)].map(([, head]) => head);
    expect(heads.slice(-4)).toEqual(['Beam B1', 'Beam B2', 'Signatures', 'Where the numbers come from']);
    expect(textOf(page)).toContain('Panel and monitoring restored by: name, date, signature');
  });
  it('is one document of its own', () => {
    const page = recordPage(gathered());
    expect(page.startsWith('<!doctype html>')).toBe(true);
    expect(page.trimEnd().endsWith('</html>')).toBe(true);
    expect(page).not.toMatch(/undefined|NaN|\[object/);
  });
});
