import { describe, expect, it } from 'vitest';
import { random } from '../../simulation/index.js';
import { parseSite } from '../../site/index.js';
import type { Proof, ProofLog } from './proofOf.js';
import { proofOf } from './proofOf.js';
import { type ProofStep, parseProofSheet } from './step.js';

const start = Date.parse('2027-01-20T10:00:00Z');

const beamOf = (settings: object = {}) => {
  const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...settings }] }).beams;
  if (!beam) throw new Error('no beam');
  return beam;
};

/** Samples of two a second from "seconds:obscuration" parts; "seconds:from-to" is a ramp [%]. */
function logged(plan: string, more: Partial<ProofLog> = {}): ProofLog {
  const chance = random(11, 'proof');
  const obscuration: number[] = [];
  for (const part of plan.split(' ')) {
    const [seconds = 0, amount = ''] = part.split(':');
    const [from = 0, to = from] = amount.split('-').map(Number);
    const rows = Number(seconds) * 2;
    for (let row = 0; row < rows; row++) obscuration.push(from + ((to - from) * row) / rows + 0.2 * chance.normal());
  }
  const time = Float64Array.from(obscuration, (_, row) => start + 500 * row);
  const test = { time, obscuration: Float64Array.from(obscuration) };
  return {
    logged: test,
    even: test,
    sampling: 'regular',
    intervalSeconds: 0.5,
    end: time.at(-1) as number,
    times: [],
    resets: [],
    ...more,
  };
}

const second = (s: number) => start + 1000 * s;

function prove(steps: readonly ProofStep[], log: ProofLog, settings: object = {}): Proof {
  const sheet = parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps });
  return proofOf(sheet, beamOf(settings), {
    ...log,
    times: log.times.length > 0 ? log.times : steps.map(() => Number.NaN),
  });
}
const verdicts = (proof: Proof) => proof.steps.map(({ verdict }) => verdict);

const full: readonly ProofStep[] = [
  { do: 'filter', transmittance: 0.9 },
  { do: 'uncover' },
  { do: 'cover-slowly' },
  { do: 'uncover' },
  { do: 'reset' },
  { do: 'cover-at-once' },
  { do: 'uncover' },
];
const fullLog = '20:0 40:19 20:0 8:0-99 25:99.5 20:0 20:0 1:0-99 25:99.5 30:0';
const reset = { resets: [second(150)] };

describe('proofOf', () => {
  it('finds every step of a good test and passes it', () => {
    const proof = prove(full, logged(fullLog, reset));
    expect(verdicts(proof)).toEqual(full.map(() => 'pass'));
    expect(proof).toMatchObject({ verdict: 'pass', unexplained: [] });
    const [filter, , slowly, , , atOnce] = proof.steps;
    expect(filter?.obscuration).toBeCloseTo(19, 0);
    expect(slowly?.signalAt).toBe((slowly?.since as number) + 10_000);
    expect(slowly?.state).toBe('fire');
    expect(atOnce?.riseSeconds).toBeLessThanOrEqual(2);
    expect(atOnce?.state).toBe('fault');
    expect(slowly?.reasons[0]).toContain('what the panel showed is not in the log');
  });
  it('a fault that clears while the cover is still being drawn off was shown all the same', () => {
    const steps: ProofStep[] = [{ do: 'cover-at-once' }, { do: 'uncover' }];
    const [atOnce] = prove(steps, logged('20:0 1:0-99 25:99.5 3:99-0 30:0')).steps;
    expect(atOnce).toMatchObject({ verdict: 'pass', state: 'fault' });
  });
  it('a cover drawn too slowly for a blocked beam fails, and says why', () => {
    const proof = prove(full, logged('20:0 40:19 20:0 8:0-99 25:99.5 20:0 20:0 4:0-99 25:99.5 30:0', reset));
    expect(verdicts(proof)).toEqual(['pass', 'pass', 'pass', 'pass', 'pass', 'fail', 'pass']);
    expect(proof.verdict).toBe('fail');
    expect(proof.steps[5]?.reasons.join(' ')).toMatch(/It took 3\.5|It took 4/);
    expect(proof.steps[5]?.reasons.join(' ')).toContain('not a blocked beam but smoke');
    expect(proof.steps[5]?.reasons.join(' ')).toContain('The signal due was fire, and it had to be fault.');
  });
  it('a cover snatched on is no proof of smoke', () => {
    const proof = prove([{ do: 'cover-slowly' }, { do: 'uncover' }], logged('20:0 1:0-99 25:99.5 30:0'));
    expect(verdicts(proof)).toEqual(['fail', 'pass']);
    expect(proof.steps[0]?.reasons[0]).toContain('Draw it slower');
  });
  it('a cover taken away too early fails by its time', () => {
    const proof = prove([{ do: 'cover-slowly' }, { do: 'uncover' }], logged('20:0 8:0-99 4:99.5 30:0'));
    expect(proof.steps[0]?.reasons[0]).toMatch(/stayed beyond 35 % for 9(\.\d+)? s, and the delay is 10 s/);
    expect(proof.steps[0]?.reasons[1]).toBe('No fire signal was due.');
  });
  it('a cover that hides too little fails by its amount', () => {
    const proof = prove([{ do: 'cover-slowly' }, { do: 'uncover' }], logged('20:0 6:0-30 40:30 30:0'));
    expect(proof.steps[0]?.reasons[0]).toMatch(/reached 3\d(\.\d)? % at most, and the fire threshold is 35 %/);
  });
  it('a filter that one lens only looks through reads once, not twice, and fails by name', () => {
    const proof = prove([{ do: 'filter', transmittance: 0.65 }, { do: 'uncover' }], logged('20:0 40:35 30:0'));
    expect(proof.steps[0]?.verdict).toBe('fail');
    expect(proof.steps[0]?.reasons[0]).toMatch(
      /35\.?\d* % of the light instead of 57\.7 %.*covers one of the two lenses only/,
    );
    const once = prove(
      [{ do: 'filter', transmittance: 0.65, crossings: 1 }, { do: 'uncover' }],
      logged('20:0 40:35 30:0'),
    );
    expect(once.steps[0]?.verdict).toBe('not shown');
    expect(once.steps[0]?.reasons[0]).toContain('too near the alarm threshold');
  });
  it('a filter that must not alarm and does is a failure', () => {
    const proof = prove([{ do: 'filter', transmittance: 0.9 }, { do: 'uncover' }], logged('20:0 40:45 30:0'));
    expect(proof.steps[0]?.reasons.join(' ')).toContain('A fire signal came, and none was to come');
  });
  it('what is left in the path shows when the cover is gone', () => {
    const proof = prove([{ do: 'cover-slowly' }, { do: 'uncover' }], logged('20:0 8:0-99 25:99.5 60:6'));
    expect(proof.steps[1]?.verdict).toBe('fail');
    expect(proof.steps[1]?.reasons[0]).toContain('does not come back');
    expect(proof.steps[1]?.reasons[0]).toMatch(/stands at (5\.9\d*|6(\.\d+)?) % obscuration/);
  });
  it('a step left out is missed and the others keep their places', () => {
    const proof = prove(full, logged('20:0 8:0-99 25:99.5 40:0 1:0-99 25:99.5 30:0', { resets: [second(70)] }));
    expect(verdicts(proof)).toEqual(['fail', 'not shown', 'pass', 'pass', 'pass', 'pass', 'pass']);
    expect(proof.steps[0]?.reasons[0]).toContain('left out');
  });
  it('a hand in the path is told as unexplained, and moves no step', () => {
    const proof = prove(
      full,
      logged('20:0 40:19 20:0 3:30 20:0 8:0-99 25:99.5 40:0 1:0-99 25:99.5 30:0', { resets: [second(170)] }),
    );
    expect(verdicts(proof)).toEqual(full.map(() => 'pass'));
    expect(proof.unexplained).toHaveLength(1);
  });
  it('a reset that nobody wrote down is not shown, and later steps are judged all the same', () => {
    const proof = prove(full, logged(fullLog));
    expect(verdicts(proof)).toEqual(['pass', 'pass', 'pass', 'pass', 'not shown', 'pass', 'pass']);
    expect(proof.verdict).toBe('open');
  });
  it('without a reset in the sheet a latched fire hides the blocked beam', () => {
    const steps = full.filter((step) => step.do !== 'reset');
    const proof = prove(steps, logged(fullLog));
    expect(proof.steps[4]?.verdict).toBe('not shown');
    expect(proof.steps[4]?.reasons[0]).toContain('reset before this step');
  });
  it("the panel's list decides where there is one", () => {
    const due = prove(full, logged(fullLog, reset)).steps;
    const panel = [
      { time: (due[2]?.signalAt as number) + 1500, what: 'fire' },
      { time: second(150), what: 'reset' },
      { time: (due[5]?.signalAt as number) + 2000, what: 'fault' },
    ];
    const good = prove(full, logged(fullLog, { ...reset, panel }));
    expect(verdicts(good)).toEqual(full.map(() => 'pass'));
    expect(good.steps[2]?.shownBy).toBe('panel');
    const silent = prove(full, logged(fullLog, { ...reset, panel: panel.slice(0, 2) }));
    expect(silent.steps[5]?.reasons).toEqual(["The panel's list has no fault for this step."]);
    const early = prove(
      full,
      logged(fullLog, { ...reset, panel: [{ time: second(84), what: 'fire' }, ...panel.slice(1)] }),
    );
    expect(early.steps[2]?.reasons[0]).toMatch(/its delay, or its clock, is not what was told/);
  });
  it('a simulated alarm is left to people, or to the list', () => {
    const steps: ProofStep[] = [{ do: 'cover-at-once' }, { do: 'uncover' }, { do: 'panel-alarm' }];
    const log = '20:0 1:0-99 25:99.5 60:0';
    expect(prove(steps, logged(log)).steps[2]).toMatchObject({ verdict: 'not shown', shownBy: 'nobody' });
    const panel = [
      { time: second(31), what: 'fault' },
      { time: second(80), what: 'fire' },
    ];
    expect(prove(steps, logged(log, { panel })).steps[2]).toMatchObject({ verdict: 'pass', signalAt: second(80) });
    expect(prove(steps, logged(log, { panel: panel.slice(0, 1) })).steps[2]?.verdict).toBe('fail');
  });
  it('says so where a threshold cannot be reached at all', () => {
    const residue = { covered: 15 };
    const proof = prove([{ do: 'cover-at-once' }, { do: 'uncover' }], logged('20:0 1:0-85 25:85 30:0'), residue);
    expect(proof.steps[0]?.verdict).toBe('fail');
    expect(proof.steps[0]?.expected.cautions[0]).toContain('cannot be reached');
  });
  it('an unlatched alarm needs no reset', () => {
    const steps = full.filter((step) => step.do !== 'reset');
    expect(verdicts(prove(steps, logged(fullLog), { latching: false }))).toEqual(steps.map(() => 'pass'));
  });
  it('refuses an empty log', () =>
    expect(() =>
      prove(full, logged('1:0', { even: { time: new Float64Array(0), obscuration: new Float64Array(0) } })),
    ).toThrow('the log holds 0 samples'));
  it('one verdict for all: a failure before what is open, what is open before a pass', () => {
    const steps: ProofStep[] = [{ do: 'cover-slowly' }, { do: 'uncover' }, { do: 'panel-alarm' }];
    const log = '20:0 8:0-99 25:99.5 40:0';
    expect(prove(steps.slice(0, 2), logged(log)).verdict).toBe('pass');
    expect(prove(steps, logged(log)).verdict).toBe('open');
    expect(prove(steps, logged(log, { panel: [] })).verdict).toBe('fail');
  });
  it('tells clean air before the test, and every change of state by the settings', () => {
    const proof = prove(full, logged(fullLog, reset));
    expect(Math.abs(proof.clean)).toBeLessThan(0.2);
    expect(proof.changes.map(({ state }) => state)).toEqual(['normal', 'fire', 'normal', 'fault', 'normal']);
  });
  it('a reset that is written into the sheet clears the fire, by its own time', () => {
    const times = full.map((_, row) => (row === 4 ? second(150) : Number.NaN));
    const proof = prove(full, logged(fullLog, { times }));
    expect(verdicts(proof)).toEqual(full.map(() => 'pass'));
    expect(proof.steps[4]?.start).toBe(second(150));
  });
  it('the reading that came back is that of the half minute after, not of what drifted later', () => {
    const steps: ProofStep[] = [{ do: 'cover-slowly' }, { do: 'uncover' }];
    const [, back] = prove(steps, logged('20:0 8:0-99 25:99.5 31:0 200:1.9')).steps;
    expect(back?.obscuration).toBeLessThan(0.5);
  });
  it('it is that before the next stay: a hand that follows at once is no part of it', () => {
    const steps: ProofStep[] = [{ do: 'cover-slowly' }, { do: 'uncover' }];
    const proof = prove(steps, logged('20:0 8:0-99 25:99.5 5:0 20:30 40:0'));
    expect(proof.steps[1]).toMatchObject({ verdict: 'pass' });
    expect(proof.steps[1]?.obscuration).toBeLessThan(0.5);
    expect(proof.unexplained).toMatchObject([{ largest: expect.closeTo(30, 0) }]);
  });
  it('one clear sample is not enough to say that the light came back', () => {
    const steps: ProofStep[] = [{ do: 'cover-slowly' }, { do: 'uncover' }];
    const log = logged('20:0 8:0-99 25:99.5 0.5:0');
    expect(prove(steps, log).steps[1]).toMatchObject({ verdict: 'fail' });
    expect(prove(steps, logged('20:0 8:0-99 25:99.5 2:0')).steps[1]).toMatchObject({ verdict: 'pass' });
  });
  it('a step that no stretch shows begins where the one before it was over, or when it was written down', () => {
    const steps: ProofStep[] = [{ do: 'cover-slowly' }, { do: 'uncover' }, { do: 'panel-alarm' }];
    const log = '20:0 8:0-99 25:99.5 40:0';
    const begun = prove(steps, logged(log)).steps[2]?.start as number;
    expect(Math.abs(begun - second(53))).toBeLessThan(1500);
    const times = [Number.NaN, Number.NaN, second(80)];
    expect(prove(steps, logged(log, { times })).steps[2]?.start).toBe(second(80));
    expect(prove([{ do: 'panel-alarm' }], logged('30:0')).steps[0]?.start).toBe(start); // nothing before: with the log
  });
  it("a fire in the panel's list counts for the step that it came in, not for the one before", () => {
    const steps: ProofStep[] = [{ do: 'panel-alarm' }, { do: 'reset' }, { do: 'cover-slowly' }, { do: 'uncover' }];
    const times = [second(5), second(15), Number.NaN, Number.NaN];
    const panel = [{ time: second(45), what: 'fire' }];
    const proof = prove(steps, logged('30:0 8:0-99 25:99.5 40:0', { times, panel }));
    expect(proof.steps[0]).toMatchObject({ verdict: 'fail', reasons: ["The panel's list has no fire here."] });
    expect(proof.steps[2]?.verdict).toBe('pass');
  });
  it('three samples are a log, two are none', () => {
    const few = (count: number) => {
      const { even } = logged('20:0');
      const cut = { time: even.time.slice(0, count), obscuration: even.obscuration.slice(0, count) };
      return () => prove([{ do: 'panel-alarm' }], logged('20:0', { even: cut }));
    };
    expect(few(2)).toThrow('beam B1: the log holds 2 samples: a proof needs the logged test');
    expect(few(3)).not.toThrow();
  });
});
