import { describe, expect, it } from 'vitest';
import { covered } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, factsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import type { CoveredJson } from '../../answers/coveredAnswer.js';
import { footnotes } from '../footnotes.js';
import { coveredSection } from './covered.js';

const shown = (test: CoveredJson | null) => coveredSection(test, 'Europe/Lisbon', footnotes()).markup;
const facts = (change: Partial<CoveredJson>) => factsOf(shown({ ...covered, ...change }));

describe('coveredSection', () => {
  it('tells the three stretches with their readings, and the share of clean', () =>
    expect(cellsOf(shown(covered))).toEqual([
      ['clean', '2027-01-20 10:00:00', '10:00:54', '98', '100 %'],
      ['covered', '2027-01-20 10:01:04', '10:01:36', '3.92', '4 %'],
      ['clean', '2027-01-20 10:01:46', '10:02:40', '98', '100 %'],
    ]));
  it('tells the ratio with its limits, and what the thresholds then mean', () =>
    expect(factsOf(shown(covered))).toEqual({
      'covered over clean': '4 % (3.9 to 4.1)',
      'largest obscuration': '96 %',
      'true smoke at the alarm of 35 %': '36.5 %',
      'fault of 90 %': 'reached in darkness',
      'clean reading, before to after': '0.1 % (−0.2 to 0.4)',
    }));
  it('a fault that cannot be reached, or is in doubt, is told as such', () => {
    const fault = (reachable: 'no' | 'doubtful') => facts({ fault: { ...covered.fault, reachable } })['fault of 90 %'];
    expect(fault('no')).toBe('never reached');
    expect(fault('doubtful')).toBe('in doubt');
  });
  it('an alarm that no smoke can raise has no true smoke', () =>
    expect(facts({ alarm: { ...covered.alarm, trueObscuration: null } })['true smoke at the alarm of 35 %']).toBe(
      'not known',
    ));
  it('a clean stretch that was not found stands as a gap, and there is no drift', () => {
    const markup = shown({ ...covered, after: null, drift: null });
    expect(cellsOf(markup)[2]).toEqual(['clean', 'not found', '', '', '']);
    expect(factsOf(markup)['clean reading, before to after']).toBe('one of them is missing');
  });
  it('heads with the verdict, and lists what to do where there is something', () => {
    expect(textOf(shown(covered))).toMatch(/^Covered test: fit /);
    expect(shown(covered)).not.toContain('To do');
    const refused = shown({ ...covered, verdict: 'refuse', actions: ['Cover again.'] });
    expect(textOf(refused)).toMatch(/^Covered test: refuse .*To do: Cover again\.$/);
    expect(itemsOf(refused)).toEqual([...covered.sentences, 'Cover again.']);
  });
  it('no test is a gap, not an empty section', () => expect(textOf(shown(null))).toBe('Covered test no covered test'));
});
