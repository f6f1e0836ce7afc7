import { describe, expect, it } from 'vitest';
import type { Change } from '../../response/index.js';
import { parseSite } from '../../site/index.js';
import type { Excursion } from './excursions.js';
import { expectedSteps } from './expected.js';
import { judged } from './judged.js';
import { type ProofStep, parseProofSheet } from './step.js';
import type { PanelEvent, StepEvidence } from './stepResult.js';

/* One step at a time. Clean air until 100 s, a stay to 140 s, the next step at 200 s. */

const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'end-to-end', separation: 62, alarmDelay: 10 }] }).beams;
if (!beam) throw new Error('no beam');

const stay: Excursion = {
  from: 100,
  to: 140,
  start: 100_000,
  end: 140_000,
  largest: 99,
  held: 99,
  last: 98,
  alarmAt: 104_000,
  faultAt: 107_000,
  alarmHeldSeconds: 34,
  faultHeldSeconds: 30,
  riseSeconds: 8,
};
const change = (seconds: number, state: Change['state'], since = seconds): Change => ({
  time: 1000 * seconds,
  since: 1000 * since,
  state,
});
const told = (seconds: number, what: string): PanelEvent => ({ time: 1000 * seconds, what });
const begun = change(0, 'normal');
const fire = change(114, 'fire', 104);

interface Case {
  readonly steps: readonly ProofStep[];
  readonly evidence?: Partial<StepEvidence>;
  readonly changes?: readonly Change[];
  readonly panel?: readonly PanelEvent[];
  readonly clean?: number;
}

/** The last of some steps, judged. */
function last({ steps, evidence = {}, changes = [begun, fire], panel, clean = 1 }: Case) {
  if (!beam) throw new Error('no beam');
  const expected = expectedSteps(parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps }), beam).at(-1);
  if (!expected) throw new Error('no step');
  const plain = { expected, excursion: stay, from: 100_000, to: 200_000, resetAt: undefined, returned: undefined };
  return judged({ ...plain, ...evidence }, changes, { clean, intervalSeconds: 1, list: [stay] }, beam, panel);
}
const slowly: ProofStep = { do: 'cover-slowly' };
const uncover: ProofStep = { do: 'uncover' };
const reset: ProofStep = { do: 'reset' };

describe('judged: covers and filters', () => {
  it('a pass says when the signal was due, and that the panel itself was not seen', () =>
    expect(last({ steps: [slowly] })).toMatchObject({
      verdict: 'pass',
      shownBy: 'signal',
      reasons: [
        'Fire due 10 s after the threshold was reached, by the settings of the site file; what the panel showed is not in the log.',
      ],
      start: 100_000,
      end: 140_000,
      obscuration: expect.closeTo(100 * (1 - 1 / 99), 8), // 1 % left of 99 % clean
      riseSeconds: 8,
      since: 104_000,
      signalAt: 114_000,
      state: 'fire',
    }));
  it('a pass by the list says when the panel had it', () =>
    expect(last({ steps: [slowly], panel: [told(116.5, 'fire')] })).toMatchObject({
      verdict: 'pass',
      shownBy: 'panel',
      reasons: ["Fire due 10 s after the threshold was reached; the panel's list has it after 12.5 s."],
    }));
  it('a fault is called a fault', () =>
    expect(
      last({
        steps: [{ do: 'cover-at-once' }],
        evidence: { excursion: { ...stay, riseSeconds: 1 } },
        changes: [begun, change(112, 'fault', 102), change(150, 'normal')],
      }),
    ).toMatchObject({ verdict: 'pass', state: 'fault', reasons: [expect.stringMatching(/^Fault due 10 s after/)] }));
  it('a filter that brought nothing passes for that; a line in the list fails it', () => {
    const quiet = {
      steps: [{ do: 'filter', transmittance: 0.9 } as const],
      evidence: { excursion: { ...stay, held: 10.9, largest: 11 } },
      changes: [begun],
    };
    expect(last(quiet)).toMatchObject({ verdict: 'pass', reasons: ['No signal came, as it must not.'] });
    expect(last({ ...quiet, panel: [] })).toMatchObject({ verdict: 'pass', shownBy: 'panel' });
    expect(last({ ...quiet, panel: [told(120, 'fire')] })).toMatchObject({
      verdict: 'fail',
      reasons: ["The panel's list has a fire in this step, and none was to come."],
    });
    expect(last({ ...quiet, panel: [told(99, 'fire'), told(201, 'fire')] }).verdict).toBe('pass');
  });
  it('a wrong amount fails, whatever signal came', () =>
    expect(
      last({ steps: [{ do: 'filter', transmittance: 0.5 }], evidence: { excursion: { ...stay, held: 40 } } }),
    ).toMatchObject({ verdict: 'fail', reasons: [expect.stringContaining('instead of 50 %')] }));
  it('a step that can prove nothing is not shown, and says why; a wrong amount still fails it', () => {
    const standing = { steps: [slowly, { do: 'cover-at-once' } as const] };
    expect(last(standing)).toMatchObject({
      verdict: 'not shown',
      reasons: ['A fire signal still stands: reset before this step, or it can show nothing.'],
    });
    const dense = { steps: [slowly, { do: 'filter', transmittance: 0.5 } as const] };
    expect(last(dense)).toMatchObject({ verdict: 'fail', reasons: [expect.stringContaining('instead of 50 %')] });
  });
  it('a signal that began before the step, or came after it, is not of it', () => {
    expect(last({ steps: [slowly], changes: [begun, change(114, 'fire', 99)] })).toMatchObject({
      verdict: 'fail',
      since: Number.NaN,
      signalAt: Number.NaN,
    });
    expect(last({ steps: [slowly], changes: [begun, change(200, 'fire', 150)] }).verdict).toBe('fail');
    expect(last({ steps: [slowly], changes: [begun, change(114, 'fire', 100)] }).verdict).toBe('pass');
  });
  it('the state is that at the end of the cover; where the log ends under it, at the end of the log', () => {
    const cleared = [begun, change(114, 'fault', 104), change(139, 'normal')];
    expect(last({ steps: [slowly], changes: cleared }).state).toBe('fault'); // cleared while it was drawn off
    expect(last({ steps: [slowly], changes: [begun, change(139, 'normal')] }).state).toBe('normal');
    expect(last({ steps: [slowly], changes: [change(140, 'normal')] }).state).toBeUndefined();
    const open = { excursion: { ...stay, end: Number.NaN } };
    expect(last({ steps: [slowly], evidence: open, changes: [begun, change(180, 'fire', 104)] }).state).toBe('fire');
  });
  it('a cover that no stretch shows fails; an uncovering after it is not shown', () => {
    expect(last({ steps: [slowly], evidence: { excursion: undefined } })).toMatchObject({
      verdict: 'fail',
      shownBy: 'signal',
      reasons: [expect.stringContaining('it was left out, or it took too little light')],
      start: 100_000,
      state: 'fire',
    });
    expect(last({ steps: [slowly, uncover], evidence: { excursion: undefined } })).toMatchObject({
      verdict: 'not shown',
      shownBy: 'nobody',
      reasons: ['The step before it does not show, so nothing was taken away.'],
    });
  });
});

describe('judged: uncovering', () => {
  const back = (returned: number | undefined, excursion: Excursion = stay) =>
    last({ steps: [slowly, uncover], evidence: { returned, excursion }, clean: 4 });
  it('2 % to either side of clean is back', () => {
    expect(back(6)).toMatchObject({ verdict: 'pass', start: 140_000, end: 140_000, obscuration: 6 });
    expect(back(2).reasons).toEqual(['The reading came back to 2 % obscuration, 2 % from clean.']);
  });
  it('more is something left behind, or a head that was moved', () => {
    for (const returned of [6.1, 1.9])
      expect(back(returned)).toMatchObject({ verdict: 'fail', shownBy: 'signal', obscuration: returned });
    expect(back(6.1).reasons[0]).toBe(
      'The reading came back to 6.1 % obscuration, and clean it was 4 %: something was left in the path, ' +
        'or the head or the reflector was moved.',
    );
  });
  it('light that does not come back tells where it stands', () => {
    const stuck =
      'The light does not come back before the log ends, or before the next step: ' +
      'it stands at 98 % obscuration, and clean it was 4 %.';
    expect(back(undefined)).toMatchObject({ verdict: 'fail', reasons: [stuck], obscuration: Number.NaN });
    expect(back(4, { ...stay, end: Number.NaN })).toMatchObject({ verdict: 'fail', reasons: [stuck] });
  });
});

describe('judged: reset', () => {
  const cleared = [begun, fire, change(150, 'normal')];
  const after = (more: Partial<Case>) =>
    last({
      steps: [slowly, uncover, reset],
      evidence: { excursion: undefined, resetAt: 150_000 },
      changes: cleared,
      ...more,
    });
  it('passes where nothing is left that would signal again', () => {
    expect(after({})).toMatchObject({ verdict: 'pass', shownBy: 'signal', state: 'normal' });
    expect(after({ panel: [told(120, 'fire'), told(150, 'reset')] })).toMatchObject({
      verdict: 'pass',
      shownBy: 'panel',
    });
  });
  it('nobody told it: not shown, with where to write it', () =>
    expect(after({ evidence: { excursion: undefined }, panel: [] })).toMatchObject({
      verdict: 'not shown',
      shownBy: 'nobody',
      state: 'normal',
      reasons: [expect.stringContaining('write its time into the sheet')],
    }));
  it('a fire that stands five seconds after it fails', () => {
    const late = (seconds: number) => after({ changes: [begun, fire, change(seconds, 'normal')] });
    expect(late(155).verdict).toBe('pass');
    expect(late(156)).toMatchObject({
      verdict: 'fail',
      state: 'fire',
      reasons: ['After the reset the state due is fire, and it had to be normal.'],
    });
  });
  it('what the next step brings is not held against it', () =>
    expect(
      after({ evidence: { excursion: undefined, resetAt: 197_000 }, changes: [...cleared, change(200, 'fault')] }),
    ).toMatchObject({ verdict: 'pass', state: 'normal' }));
  it('a state that the signal does not know fails', () =>
    expect(after({ changes: [] }).reasons[0]).toContain('the state due is not known'));
  it("a fire again in the panel's list, after the reset and before the next step, fails", () => {
    const again = (seconds: number, what = 'fire') => after({ panel: [told(seconds, what)] }).verdict;
    expect(again(151)).toBe('fail');
    expect(after({ panel: [told(199, 'fire')] })).toMatchObject({
      verdict: 'fail',
      shownBy: 'panel',
      reasons: ["The panel's list has a fire again after the reset."],
    });
    for (const seconds of [120, 150, 200]) expect(again(seconds)).toBe('pass');
    expect(again(151, 'fault')).toBe('pass');
  });
});

describe('judged: what only the panel shows', () => {
  const alarm = (steps: readonly ProofStep[], panel?: readonly PanelEvent[]) =>
    last({ steps, evidence: { excursion: undefined }, ...(panel && { panel }) });
  it('asks the list for a fire, in this step', () => {
    expect(alarm([{ do: 'panel-alarm' }], [told(120, 'fire')])).toMatchObject({ verdict: 'pass', signalAt: 120_000 });
    expect(alarm([{ do: 'panel-alarm' }], [told(120, 'fault')]).verdict).toBe('fail');
    expect(alarm([{ do: 'panel-alarm' }])).toMatchObject({ verdict: 'not shown', start: 100_000, state: 'fire' });
  });
  it('also where a fire stands already', () =>
    expect(alarm([slowly, { do: 'panel-alarm' }], [told(120, 'fire')]).verdict).toBe('pass'));
});
