import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { expectedSteps, lightingOf } from './expected.js';
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

describe('expectedSteps: how much a step takes', () => {
  const strip = (step: object, reflector: object) =>
    only({ do: 'part-cover', ...step } as ProofStep, {}, { reflector }).obscuration?.value;
  const square = { shape: 'rectangle', width: 100 };
  const disc = { shape: 'round', diameter: 100 };
  it('derived: a strip of a rectangle hides its share, from an edge or across the middle', () => {
    expect(strip({ millimetres: 30 }, square)).toBeCloseTo(30, 6);
    expect(strip({ millimetres: 30, from: 'middle' }, square)).toBeCloseTo(30, 6);
  });
  it('derived: half of a disc is half; a strip of half its width across the middle hides 60.9 %', () => {
    expect(strip({ millimetres: 50 }, disc)).toBeCloseTo(50, 6);
    // 2 (asin(1/2) + 1/2 root(3/4)) / pi of the disc
    expect(strip({ millimetres: 50, from: 'middle' }, disc)).toBeCloseTo(60.9, 1);
    expect(strip({ millimetres: 25 }, disc)).toBeCloseTo(19.55, 2);
  });
  it('derived: a lobe of 0.05 degrees is half as bright 54.1 mm from its middle, 62 m away', () => {
    const beam = { halfAngle: 0.05, separation: 62, id: 'B1' };
    expect(lightingOf({ lit: 'by-the-lobe' }, beam)?.halfPowerRadius).toBeCloseTo(54.105, 3);
    expect(lightingOf({ lit: 'evenly' }, beam)).toBeUndefined();
    expect(lightingOf({}, beam)).toBeUndefined();
  });
  it('a filter may be off by 3 %, a cover by 5 %, and nothing takes more than all', () => {
    const single = { layout: 'end-to-end' };
    expect(only({ do: 'filter', transmittance: 0.9 }, single).obscuration).toEqual({
      value: expect.closeTo(10, 9),
      low: expect.closeTo(7, 9),
      high: expect.closeTo(13, 9),
    });
    expect(only({ do: 'part-cover', obscuration: 60 }).obscuration).toEqual({ value: 60, low: 55, high: 65 });
    expect(only({ do: 'part-cover', obscuration: 98 }).obscuration?.high).toBe(100);
  });
});

describe('expectedSteps: whether it alarms', () => {
  const single = { layout: 'end-to-end', alarmThreshold: 35, alarmDelay: 10 };
  const filter = (percent: number) => only({ do: 'filter', transmittance: 1 - percent / 100 }, single);
  const cover = (obscuration: number) => only({ do: 'part-cover', obscuration }, single);
  const told = ({ signal, doubts }: ReturnType<typeof only>) => (doubts.length > 0 ? 'in doubt' : (signal ?? 'quiet'));
  it.each([
    [31, 'quiet'],
    [33, 'in doubt'],
    [37, 'in doubt'],
    [39, 'fire'],
  ])('a filter of %d % before a threshold of 35 %: %s', (percent, says) => expect(told(filter(percent))).toBe(says));
  it.each([
    [29, 'quiet'],
    [31, 'in doubt'],
    [39, 'in doubt'],
    [40, 'fire'], // 35 % at the least
    [30, 'in doubt'], // 35 % at the most: at the threshold it alarms
  ])('a cover of %d % before a threshold of 35 %: %s', (percent, says) => expect(told(cover(percent))).toBe(says));
  it('a step in doubt brings no signal to wait for, and says to take another', () =>
    expect(filter(36)).toMatchObject({
      signal: undefined,
      window: undefined,
      state: 'normal',
      holdSeconds: 0,
      doubts: ['36 % lies too near the alarm threshold of 35 % to prove anything: choose a denser or a thinner one'],
    }));
});

describe('expectedSteps: how long to hold it', () => {
  it('a cover: the delay and twice the allowance, or longer where the sheet says so', () => {
    expect(only({ do: 'cover-slowly' }, { alarmDelay: 12 }).holdSeconds).toBe(22);
    expect(only({ do: 'cover-slowly', hold: 60 }, { alarmDelay: 12 }).holdSeconds).toBe(60);
    expect(only({ do: 'cover-at-once', hold: 5 }, { faultDelay: 12 }).holdSeconds).toBe(22);
  });
  it('a filter that must not alarm: half a minute, and longer than an alarm would take', () => {
    const quiet = (alarmDelay: number, hold?: number) =>
      only({ do: 'filter', transmittance: 0.95, ...(hold && { hold }) }, { alarmDelay }).holdSeconds;
    expect(quiet(10)).toBe(30);
    expect(quiet(25)).toBe(35);
    expect(quiet(10, 90)).toBe(90);
  });
});

describe('expectedSteps: the state runs on', () => {
  const states = (...steps: readonly ProofStep[]) => expectedSteps(sheetOf(steps), beamOf()).map(({ state }) => state);
  const [slowly, atOnce, uncover, reset, alarm]: ProofStep[] = [
    { do: 'cover-slowly' },
    { do: 'cover-at-once' },
    { do: 'uncover' },
    { do: 'reset' },
    { do: 'panel-alarm' },
  ];
  if (!slowly || !atOnce || !uncover || !reset || !alarm) throw new Error('no steps');
  it('a blocked beam stays a fault through resets until it is uncovered', () => {
    expect(states(atOnce, reset, reset)).toEqual(['fault', 'fault', 'fault']);
    expect(states(atOnce, uncover, reset)).toEqual(['fault', 'normal', 'normal']);
    expect(states(slowly, reset)).toEqual(['fire', 'normal']); // whether it alarms again is for the log to show
  });
  it('while a fire stands nothing new can come: such a step is in doubt', () => {
    const standing = 'a fire signal still stands: reset before this step, or it can show nothing';
    const second = (step: ProofStep) => expectedSteps(sheetOf([slowly, step]), beamOf())[1];
    for (const step of [slowly, atOnce, alarm, { do: 'filter', transmittance: 0.5 } as const])
      expect(second(step)).toMatchObject({ signal: undefined, state: 'fire', doubts: [standing] });
    expect(second({ do: 'filter', transmittance: 0.95 })).toMatchObject({
      signal: undefined,
      state: 'fire',
      doubts: [],
    });
    for (const step of [slowly, atOnce, alarm]) expect(only(step).doubts).toEqual([]);
  });
  it('a simulated alarm is a fire', () => expect(only(alarm)).toMatchObject({ signal: 'fire', state: 'fire' }));
});

describe('expectedSteps: words', () => {
  it('say what a hand must do', () => {
    expect(only({ do: 'cover-slowly' }, { alarmThreshold: 25 }).words).toContain('At 25 % the alarm delay begins');
    expect(only({ do: 'filter', transmittance: 0.8 }, { wavelength: 950 }).words).toBe(
      'Hold a filter of 80 % single-pass transmittance at 950 nm before the head. ' +
        'The light meets it twice, out and back: 36 % obscuration.',
    );
    expect(only({ do: 'filter', transmittance: 0.8, crossings: 1 }).words).toContain('The light meets it once: 20 %');
    expect(only({ do: 'part-cover', obscuration: 40 }).words).toBe(
      'Cover part of the reflector, so that 40 % of its light is hidden.',
    );
    const square = { reflector: { shape: 'rectangle', width: 100 } };
    expect(only({ do: 'part-cover', millimetres: 40 }, {}, square).words).toBe(
      'Cover 40 mm from one edge of the reflector on (evenly lit). The light meets it once: 40 % obscuration.',
    );
    expect(
      only(
        { do: 'part-cover', millimetres: 40, from: 'middle' },
        { halfAngle: 0.05 },
        { ...square, lit: 'by-the-lobe' },
      ).words,
    ).toMatch(/^Cover 40 mm across the middle of the reflector \(lit by the lobe\)/);
  });
  it('bode ill where a threshold cannot be reached, and only there', () => {
    expect(only({ do: 'cover-slowly' }, { covered: 70 }).cautions).toEqual([
      'the alarm threshold of 35 % cannot be reached: the most that can be read is 30 %',
    ]);
    expect(only({ do: 'cover-at-once' }, { covered: 10 }).cautions).toEqual([]);
    expect(only({ do: 'cover-at-once' }, { covered: 11 }).cautions[0]).toContain('the fault threshold of 90 %');
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
  it('a filter of half the threshold, by what the light meets of it; a reset only where an alarm stays', () => {
    const steps = (settings: object) => usualSteps(beamOf({ alarmThreshold: 36, ...settings })).steps;
    // 18 % are 0.82 of the light: once through 0.82, twice through its root
    expect(steps({ layout: 'end-to-end' })[0]).toEqual({ do: 'filter', transmittance: 0.82 });
    expect(steps({})[0]).toEqual({ do: 'filter', transmittance: 0.91 });
    const order = [
      'filter',
      'uncover',
      'cover-slowly',
      'uncover',
      'reset',
      'cover-at-once',
      'uncover',
      'panel-alarm',
      'reset',
    ];
    expect(steps({}).map((step) => step.do)).toEqual(order);
    expect(steps({ latching: false }).map((step) => step.do)).toEqual(order.filter((_, at) => at !== 4));
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
  it.each([
    [{ do: 'filter', transmittance: 0 }, 'give its single-pass transmittance, above 0 and below 1'],
    [{ do: 'filter', transmittance: 1 }, 'above 0 and below 1'],
    [{ do: 'filter', transmittance: 0.5, crossings: 3 }, 'steps[0].crossings is 3: use 1, 2'],
    [
      { do: 'part-cover', obscuration: 0 },
      'give the share of the light that the cover hides [%], above 0 and at most 100',
    ],
    [{ do: 'part-cover', obscuration: 100.1 }, 'above 0 and at most 100'],
    [{ do: 'part-cover', millimetres: 0 }, 'give the width of the cover in millimetres, a number above 0'],
    [{ do: 'part-cover', millimetres: Number.POSITIVE_INFINITY }, 'a number above 0'],
    [{ do: 'part-cover', millimetres: 5, from: 'top' }, 'use "edge", "middle"'],
    [{ do: 'uncover', hold: 0 }, 'give seconds, a number above 0'],
    [{ do: 'uncover', time: '  ' }, 'give a text that is not empty'],
  ])('a step of %j is refused', (step, says) => expect(refused({ ...base, steps: [step] })).toThrow(says));
  it.each([
    { do: 'filter', transmittance: 0.999, crossings: 1 },
    { do: 'part-cover', obscuration: 100 },
    { do: 'part-cover', millimetres: 0.1, from: 'edge', hold: 0.1, time: '10:00', note: 'n' },
    { do: 'panel-alarm' },
  ])('a step of %j is taken as it is', (step) =>
    expect(parseProofSheet({ ...base, steps: [step] }).steps).toEqual([step]),
  );
  it.each([
    [{ shape: 'rectangle', width: 0 }, 'give the width across the edge of the cover in millimetres'],
    [{ shape: 'rectangle', width: 10, height: 0 }, 'give the height in millimetres'],
    [{ shape: 'round', diameter: -1 }, 'give the diameter in millimetres'],
    [{ shape: 'round', diametre: 5 }, 'reflector.diameter is missing'],
  ])('a reflector of %j is refused', (reflector, says) => expect(refused({ ...base, reflector })).toThrow(says));
  it('reflector and light are kept', () => {
    const whole = { ...base, reflector: { shape: 'rectangle', width: 100, height: 80 }, lit: 'by-the-lobe' };
    expect(parseProofSheet(whole)).toEqual(whole);
  });
});
