import { describe, expect, it } from 'vitest';
import { covered, proof } from '../../../../../../tests/commissioning/answers.js';
import { signsOf } from '../../../../../../tests/commissioning/readPage.js';
import { coveredDrawing, proofDrawing } from './testDrawings.js';

const says = (markup: string) => signsOf(markup, 'text').map((text) => text.says);
const thresholds = { alarmThreshold: 35, faultThreshold: 90 };

describe('coveredDrawing', () => {
  const { markup } = coveredDrawing(covered, 'Europe/Lisbon');
  it('names the beam, and the time at which it begins, on the clock of the site', () => {
    expect(markup).toContain('Covered test of beam B1');
    expect(says(markup)).toContain('seconds after 2027-01-20 10:00:00');
    expect(says(coveredDrawing(covered, 'Asia/Tokyo').markup)).toContain('seconds after 2027-01-20 19:00:00');
  });
  it('draws the reading in per cent of clean, with nothing and all in sight', () => {
    expect(says(markup)).toEqual(expect.arrayContaining(['0', '50', '100', '% of the clean reading']));
    // 160 s fill 656; from -5.25 to 110.25 % of the clean reading fill 144.
    expect(signsOf(markup, 'path')[0]?.d).toMatch(/^M52\.0 36\.8L298\.0 36\.8L306\.2 156\.5L/);
  });
  it('shades the three stretches that were used', () => {
    const [before, during, after] = signsOf(markup, 'rect');
    expect([before, during, after].map((rect) => [Number(rect?.x), Number(rect?.width)])).toEqual([
      [52, 221.4], // 0 to 54 s
      [314.4, 131.2], // 64 to 96 s
      [486.6, 221.4], // 106 to 160 s
    ]);
    expect(says(markup).filter((text) => text === 'clean')).toHaveLength(2);
    expect(says(markup)).toContain('covered');
  });
  it('a stretch that was not found is not shaded', () => {
    expect(signsOf(coveredDrawing({ ...covered, after: null }, 'UTC').markup, 'rect')).toHaveLength(3);
    const open = { ...covered, covered: { ...covered.covered, to: null }, before: { ...covered.covered, from: null } };
    expect(signsOf(coveredDrawing(open, 'UTC').markup, 'rect')).toHaveLength(2);
  });
});

describe('proofDrawing', () => {
  const { markup } = proofDrawing(proof, thresholds, 'Europe/Lisbon');
  it('names the beam and its thresholds', () => {
    expect(markup).toContain('Proof of beam B1');
    expect(says(markup)).toEqual(expect.arrayContaining(['alarm 35 %', 'fault 90 %', 'obscuration [%]']));
    expect(says(markup)).toContain('seconds after 2027-01-20 10:00:00; numbers above: steps');
  });
  it('numbers each step where it begins; one that does not show has no place', () => {
    const places = signsOf(markup, 'text').flatMap(({ says: text, x, y }) =>
      Number(y) < 24 && /^\d$/.test(text ?? '') ? [[text, Number(x)]] : [],
    );
    // 120 s fill 656 from 52 on: steps at 20, 60 and 80 s.
    expect(places).toEqual([
      ['1', 161.3],
      ['2', 380],
      ['3', 489.3],
    ]);
  });
  it('draws obscuration as it was, with nothing and all in sight', () =>
    expect(signsOf(markup, 'path')[0]?.d).toMatch(/^M52\.0 160\.9L161\.3 160\.9L172\.3 136\.6L/));
  it('a small loss stands on the whole scale too', () => {
    const small = { ...proof, trace: { ...proof.trace, values: proof.trace.values.map(() => 1) } };
    expect(says(proofDrawing(small, thresholds, 'UTC').markup)).toEqual(expect.arrayContaining(['0', '100']));
  });
});
