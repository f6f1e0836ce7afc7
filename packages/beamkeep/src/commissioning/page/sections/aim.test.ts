import { describe, expect, it } from 'vitest';
import { aim } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, factsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import type { AimJson } from '../../answers/aimAnswer.js';
import { footnotes } from '../footnotes.js';
import { aimSection } from './aim.js';

const shown = (answer: AimJson | null) => aimSection(answer, footnotes()).markup;
const exact = (value: number) => ({ value, low: value, high: value });

describe('aimSection', () => {
  it('tells the lobe, where the head was left, and its margins, each with its limits', () =>
    expect(factsOf(shown(aim))).toEqual({
      lobe: 'gaussian, 5 readings',
      'half-angle, pan': '0.7 deg (0.69 to 0.71)',
      'left off the peak, pan': '0.1 deg (0.08 to 0.12)',
      'loss where it was left': '0.06 dB (0.05 to 0.07)',
      'stays without the beam': '4 %, by the site file',
      'turn before 35 %': '0.45 deg (0.43 to 0.47)',
      'that is, at the far end': '1299 mm',
      'turn before 90 %': '1.2 deg (1.1 to 1.3)',
    }));
  it('over two axes tells both', () => {
    const fit = { ...aim.fit, centre: [exact(0), exact(0)], halfAngle: [exact(0.7), exact(0.5)] };
    const left = { at: [0.2, 0], offset: [exact(0.2), exact(-0.1)], loss: exact(0.3) };
    expect(factsOf(shown({ ...aim, axes: ['pan', 'tilt'], fit, left }))).toMatchObject({
      'half-angle, pan': '0.7 deg (0.7 to 0.7)',
      'half-angle, tilt': '0.5 deg (0.5 to 0.5)',
      'left off the peak, pan': '0.2 deg (0.2 to 0.2)',
      'left off the peak, tilt': '−0.1 deg (−0.1 to −0.1)',
    });
  });
  it('where nobody told where it was left, that is a gap', () =>
    expect(factsOf(shown({ ...aim, left: null }))).toMatchObject({
      'left off the peak, pan': 'not told',
      'loss where it was left': 'not told',
    }));
  it('a residue of the scan leads to the lobe, one of the site file to the setting', () => {
    const basis = (answer: AimJson) =>
      shown(answer).match(
        /stays without the beam<\/dt><dd><span class="noted"><span class="number" title="([^:]*)/,
      )?.[1];
    expect(basis(aim)).toBe('setting of the equipment');
    expect(basis({ ...aim, residue: { share: 0.04, from: 'scan' } })).toBe('lobe of the scan');
  });
  it('tells what the structure may do in shares of the margin; nothing where nothing is known of it', () => {
    expect(shown(aim)).not.toContain('What the structure may do');
    const move = {
      degrees: 0.45,
      millimetres: 50,
      verdict: 'tight',
      formula: 'f',
      source: 'IBC',
      seen: 'from memory',
    } as const;
    const markup = shown({
      ...aim,
      movement: [
        { ...move, what: 'a roof', share: 0.75 },
        { ...move, what: 'a column', share: null },
        { ...move, what: 'a member', share: 'infinite' },
      ],
    });
    expect(cellsOf(markup)).toEqual([
      ['a roof', '0.45 deg', '75 %', 'f; IBC (from memory)'],
      ['a column', '0.45 deg', 'not known', 'f; IBC (from memory)'],
      ['a member', '0.45 deg', 'never', 'f; IBC (from memory)'],
    ]);
  });
  it('heads with the verdict, and lists what to do where there is something', () => {
    expect(textOf(shown(aim))).toMatch(/^Aim: good /);
    expect(shown(aim)).not.toContain('To do');
    const again = shown({ ...aim, verdict: 'look again', actions: ['Aim on the peak.'] });
    expect(textOf(again)).toMatch(/^Aim: look again .*To do: Aim on the peak\.$/);
    expect(itemsOf(again)).toEqual([...aim.sentences, 'Aim on the peak.']);
  });
  it('no scan is a gap', () => expect(textOf(shown(null))).toBe('Aim no aim scan'));
});
