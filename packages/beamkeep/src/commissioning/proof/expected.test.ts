import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { expectedSteps } from './expected.js';
import { type ProofStep, parseProofSheet } from './step.js';
import { usualSteps } from './usualSteps.js';

const beamOf = (settings: object = {}) => {
  const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...settings }] }).beams;
  if (!beam) throw new Error('no beam');
  return beam;
};
const sheetOf = (steps: readonly ProofStep[], more: object = {}) =>
  parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps, ...more });
const only = (step: ProofStep, settings: object = {}, more: object = {}) => {
  const [expected] = expectedSteps(sheetOf([step], more), beamOf(settings));
  if (!expected) throw new Error('no step');
  return expected;
};

describe('expectedSteps', () => {
  it('a filter before a reflective head is met twice, before an end-to-end receiver once', () => {
    const filter = { do: 'filter', transmittance: 0.65 } as const;
    expect(only(filter).obscuration?.value).toBeCloseTo(57.75, 10);
    expect(only(filter, { layout: 'end-to-end' }).obscuration?.value).toBeCloseTo(35, 10);
    expect(only(filter).words).toContain('meets it twice');
  });
  it('a cover on the reflector is met once: a third covered reads a third', () => {
    const cover = { do: 'part-cover', millimetres: 33.3 } as const;
    const square = { reflector: { shape: 'rectangle', width: 99.9 } };
    expect(only(cover, {}, square).obscuration?.value).toBeCloseTo(100 / 3, 6);
  });
  it('the lobe counts where it is asked for and known', () => {
    const cover = { do: 'part-cover', millimetres: 50, from: 'middle' } as const;
    const lit = { reflector: { shape: 'rectangle', width: 100 }, lit: 'by-the-lobe' };
    expect(() => only(cover, {}, lit)).toThrow("needs the beam's halfAngle");
    // A lobe of 0.05 degrees lights 54 mm around it: the middle half of 100 mm holds more than half of the light.
    expect(only(cover, { halfAngle: 0.05 }, lit).obscuration?.value).toBeGreaterThan(55);
  });
  it('takes thresholds and delays from the settings', () => {
    const slowly = only({ do: 'cover-slowly' }, { alarmDelay: 20 });
    expect(slowly).toMatchObject({ signal: 'fire', state: 'fire', window: { from: 20, to: 25 }, holdSeconds: 30 });
    const atOnce = only({ do: 'cover-at-once' }, { faultDelay: 3, faultThreshold: 85 });
    expect(atOnce).toMatchObject({ signal: 'fault', state: 'fault', window: { from: 3, to: 8 } });
    expect(atOnce.words).toContain('85 %');
  });
  it('a filter below the threshold must not alarm, one above must, one at it proves nothing', () => {
    const filter = (transmittance: number) => only({ do: 'filter', transmittance });
    expect(filter(0.9)).toMatchObject({ signal: undefined, state: 'normal', holdSeconds: 30 });
    expect(filter(0.6)).toMatchObject({ signal: 'fire', state: 'fire' });
    expect(filter(0.806)).toMatchObject({ signal: undefined, state: 'normal' });
    expect(filter(0.806).doubts[0]).toContain('too near the alarm threshold');
  });
  it('a residue that the equipment does not take off moves what a cover must take', () => {
    // 38 % of true loss reads 0.85 x 38 = 32.3 %.
    expect(only({ do: 'part-cover', obscuration: 30 }, { covered: 15 }).signal).toBeUndefined();
    expect(only({ do: 'cover-at-once' }, { covered: 15 }).cautions[0]).toContain('the most that can be read is 85 %');
  });
  it('a latched fire stands until a reset, and no fault withdraws it (EN 54-12:2002, 4.10)', () => {
    const states = (settings: object) =>
      expectedSteps(
        sheetOf([
          { do: 'cover-slowly' },
          { do: 'uncover' },
          { do: 'cover-at-once' },
          { do: 'uncover' },
          { do: 'reset' },
        ]),
        beamOf(settings),
      ).map(({ state }) => state);
    expect(states({})).toEqual(['fire', 'fire', 'fire', 'fire', 'normal']);
    expect(states({ latching: false })).toEqual(['fire', 'normal', 'fault', 'normal', 'normal']);
  });
  it('a reset under a cover leaves the blocked beam a fault', () =>
    expect(
      expectedSteps(sheetOf([{ do: 'cover-at-once' }, { do: 'reset' }]), beamOf()).map(({ state }) => state),
    ).toEqual(['fault', 'fault']));
  it('says what a step lacks', () => {
    expect(() => only({ do: 'part-cover' })).toThrow('needs "millimetres" or "obscuration"');
    expect(() => only({ do: 'part-cover', millimetres: 20 })).toThrow('needs the "reflector"');
  });
});

describe('usualSteps', () => {
  it('are a sheet without a doubt for every layout and usual threshold', () => {
    for (const layout of ['reflective', 'end-to-end'])
      for (const alarmThreshold of [25, 35, 50]) {
        const beam = beamOf({ layout, alarmThreshold });
        const steps = expectedSteps(usualSteps(beam), beam);
        expect(steps.flatMap(({ doubts }) => doubts)).toEqual([]);
        expect(steps[0]?.obscuration?.value).toBeCloseTo(alarmThreshold / 2, -0.5);
      }
  });
});

describe('parseProofSheet', () => {
  const refused = (sheet: unknown) => () => parseProofSheet(sheet, 'b1.json');
  const base = { format: 'beamkeep-proof-sheet/1', beam: 'B1', steps: [{ do: 'uncover' }] };
  it.each([
    [{ ...base, step: [] }, 'b1.json: unknown key "step": the nearest known key is "steps"'],
    [{ ...base, steps: [{ do: 'cover' }] }, 'b1.json: steps[0].do is "cover": use "cover-slowly", "cover-at-once"'],
    [{ ...base, steps: [{ do: 'filter', transmittance: 35 }] }, 'steps[0].transmittance is 35: give its single-pass'],
    [{ ...base, steps: [{ do: 'filter' }] }, 'steps[0].transmittance is missing'],
    [
      { ...base, steps: [{ do: 'uncover', holds: 3 }] },
      'steps[0]: unknown key "holds": the nearest known key is "hold"',
    ],
    [{ ...base, steps: [] }, 'steps is a list: give at least one step'],
    [{ ...base, format: 'beamkeep-proof-sheet/2' }, 'format is "beamkeep-proof-sheet/2": use "beamkeep-proof-sheet/1"'],
    [{ beam: 'B1', steps: base.steps }, 'format is missing: use "beamkeep-proof-sheet/1"'],
    [[], 'the document is a list'],
    ['{ "format": }', 'b1.json:1:13: not JSON'],
  ])('%j is refused: %s', (sheet, says) => expect(refused(sheet)).toThrow(says));
});
