import { describe, expect, it } from 'vitest';
import { gathered, proof } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import type { ProofJson, StepJson } from '../../answers/proofAnswer.js';
import { footnotes } from '../footnotes.js';
import { proofSection } from './proof.js';

const [beam] = gathered().beams;
if (!beam) throw new Error('no beam');
const { settings } = beam;
const shown = (test: ProofJson | null) => proofSection(test, settings, 'Europe/Lisbon', footnotes()).markup;
const step = (change: Partial<StepJson>) => {
  const [first] = proof.steps;
  if (!first) throw new Error('no step');
  return shown({ ...proof, steps: [{ ...first, ...change }] });
};

describe('proofSection', () => {
  it('has a line a step: when, what it must show, what it took, how it came out', () =>
    expect(cellsOf(shown(proof))).toEqual([
      [
        '1',
        'filter',
        '10:00:20',
        '19 % (16 to 22); no signal, normal',
        '18.6 %',
        'pass. No signal came, as it must not.',
      ],
      ['2', 'uncover', '10:01:00', 'no signal, normal', '', 'pass. The reading came back.'],
      [
        '3',
        'cover-slowly',
        '10:01:20',
        'fire after 10 to 15 s',
        '99.5 %',
        'pass. Fire due 10 s after the threshold was reached.',
      ],
      ['4', 'panel-alarm', 'not shown', 'fire', '', "pass. The panel's list has it."],
    ]));
  it('a step that failed stands out, one that does not show is a gap', () => {
    expect(step({ verdict: 'fail', reasons: ['One.', 'Two.'] })).toContain('<td><b>FAIL</b>. One. Two.</td>');
    expect(step({ verdict: 'not shown' })).toContain('<td><span class="missing">not shown</span>. ');
  });
  it('a filter leads to the rule for filters, a cover to the one for covers', () => {
    const title = (test: string) => test.match(/<td><span class="noted"><span class="number" title="([^:]*)/)?.[1];
    expect(title(step({}))).toBe('obscuration by a filter');
    const [first] = proof.steps;
    if (!first) throw new Error('no step');
    expect(title(step({ expected: { ...first.expected, do: 'part-cover' } }))).toBe(
      'obscuration by a cover on the reflector',
    );
  });
  it('says by whom it was judged', () => {
    expect(textOf(shown(proof))).toContain("Judged by the received signal and by the panel's own list.");
    expect(textOf(shown({ ...proof, panelList: false }))).toContain("the panel's own list was not given");
  });
  it('tells losses that belong to no step, where there are any', () => {
    expect(shown(proof)).not.toContain('belong to no step');
    const stay = { start: '2027-01-20T10:05:00Z', end: null, largest: 31.25 };
    const markup = shown({ ...proof, verdict: 'fail', unexplained: [stay] });
    expect(textOf(markup)).toMatch(/^Proof: fail .*Losses that belong to no step:/);
    expect(itemsOf(markup)).toEqual(['2027-01-20 10:05:00: 31.3 %']);
  });
  it('no proof is a gap', () => expect(textOf(shown(null))).toBe('Proof no proof'));
});
