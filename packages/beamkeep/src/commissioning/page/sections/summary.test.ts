import { describe, expect, it } from 'vitest';
import { aim, covered, gathered, proof, siteOf } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import { summarySection } from './summary.js';

const shown = (...args: Parameters<typeof gathered>) => summarySection(gathered(...args)).markup;

describe('summarySection', () => {
  it('has a line a beam: path, alarm, and how aim, cover and proof came out', () =>
    expect(
      cellsOf(shown(siteOf({}, { separation: 40, layout: 'end-to-end', alarmThreshold: 25, alarmDelay: 5 }))),
    ).toEqual([
      ['B1', '62 m, reflective', '35 %, 10 s', 'on the peak', 'fit', 'pass'],
      ['B2', '40 m, end-to-end', '25 %, 5 s', 'not scanned', 'not covered', 'not proved'],
    ]));
  it('says in plain words what wants another look', () => {
    const cells = cellsOf(
      shown(siteOf({}, {}), {
        B1: {
          aim: { ...aim, verdict: 'look again' },
          covered: { ...covered, verdict: 'caution' },
          proof: { ...proof, verdict: 'open' },
        },
        B2: {
          aim: { ...aim, verdict: 'not known' },
          covered: { ...covered, verdict: 'refuse' },
          proof: { ...proof, verdict: 'fail' },
        },
      }),
    );
    expect(cells.map((row) => row.slice(3))).toEqual([
      ['look again', 'caution', 'open'],
      ['aim not told', 'REFUSED', 'FAIL'],
    ]);
  });
  it('counts what must be looked at, and names the beam of each point', () => {
    const markup = shown(siteOf({}), { B1: { aim: { ...aim, verdict: 'look again' }, covered, proof } });
    expect(markup).toContain('Look at this before the hand-over (1)');
    expect(itemsOf(markup)[0]).toBe('B1 aim: The head was left 0.1 degrees off the peak.');
    expect(markup).toContain('<b>B1</b>');
  });
  it('counts what is missing; what concerns the whole site names no beam', () => {
    const markup = shown();
    expect(markup).toContain('Missing in this record (3)');
    expect(itemsOf(markup)).toContain('who did the work');
    expect(markup).not.toContain('<b>null</b>');
  });
  it('says so where nothing is left to look at, and where nothing is missing', () => {
    const whole = { ...gathered(), attention: [], missing: [] };
    const words = textOf(summarySection(whole).markup);
    expect(words).toContain('Look at this before the hand-over (0) Nothing failed, and nothing wants looking at.');
    expect(words).toContain('Missing in this record (0) Nothing.');
  });
});
