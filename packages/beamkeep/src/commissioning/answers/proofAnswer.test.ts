import { describe, expect, it } from 'vitest';
import { siteOf } from '../../../../../tests/commissioning/answers.js';
import { expectedSteps } from '../proof/expected.js';
import { parseProofSheet } from '../proof/step.js';
import type { StepResult } from '../proof/stepResult.js';
import { planAnswer, proofAnswer } from './proofAnswer.js';

const [beam] = siteOf({}).beams;
if (!beam) throw new Error('no beam');
const sheet = parseProofSheet({
  format: 'beamkeep-proof-sheet/1',
  beam: 'B1',
  steps: [{ do: 'filter', transmittance: 0.9 }, { do: 'cover-slowly' }, { do: 'cover-at-once' }],
});
const expected = expectedSteps(sheet, beam);
const reading = {
  panelList: true,
  trace: { start: '2027-01-20T10:00:00.000Z', seconds: [0], values: [1] },
  assumed: ['a'],
  input: { lines: 2, dropped: 0, notes: [] },
};

describe('planAnswer', () => {
  const plan = planAnswer(sheet, expected, ['alarmDelay 10 s']);
  it('says of each step what it must show; null where nothing is asked', () => {
    expect(plan).toMatchObject({ format: 'beamkeep-proof-plan/1', beam: 'B1', assumed: ['alarmDelay 10 s'], sheet });
    expect(
      plan.steps.map((step) => [
        step.do,
        step.obscuration?.value,
        step.signal,
        step.window,
        step.state,
        step.holdSeconds,
      ]),
    ).toEqual([
      ['filter', expect.closeTo(19, 9), null, null, 'normal', 30],
      ['cover-slowly', undefined, 'fire', { from: 10, to: 15 }, 'fire', 20],
      ['cover-at-once', undefined, null, { from: 10, to: 15 }, 'fire', 20],
    ]);
    expect(plan.steps[1]?.obscuration).toBeNull();
    expect(plan.steps[2]?.doubts).toHaveLength(1);
    expect(plan.steps[0]?.words).toContain('Hold a filter');
    expect(plan.steps.map(({ cautions }) => cautions)).toEqual([[], [], []]);
  });
  it('comes back through JSON as it was', () => expect(JSON.parse(JSON.stringify(plan))).toEqual(plan));
});

describe('proofAnswer', () => {
  const [first] = expected;
  if (!first) throw new Error('no step');
  const nothing: StepResult = {
    expected: first,
    verdict: 'not shown',
    reasons: ['Why.'],
    start: Number.NaN,
    end: Number.NaN,
    obscuration: Number.NaN,
    riseSeconds: Number.NaN,
    since: Number.NaN,
    signalAt: Number.NaN,
    shownBy: 'nobody',
    state: undefined,
  };
  const answer = (step: StepResult) =>
    proofAnswer(
      'B1',
      {
        verdict: 'open',
        steps: [step],
        clean: 0.4,
        unexplained: [{ start: 1000, end: Number.NaN, largest: 31 }],
        changes: [],
      },
      reading,
    );
  it('what is not known is null, never a number', () =>
    expect(answer(nothing).steps[0]).toMatchObject({
      start: null,
      end: null,
      obscuration: null,
      riseSeconds: null,
      thresholdAt: null,
      signalAt: null,
      state: null,
      verdict: 'not shown',
      reasons: ['Why.'],
      shownBy: 'nobody',
    }));
  it('instants are ISO 8601: when it began, when the threshold was reached, when the signal came', () =>
    expect(
      answer({
        ...nothing,
        start: 1000,
        end: 9000,
        since: 2000,
        signalAt: 3000,
        obscuration: 19,
        riseSeconds: 5,
        state: 'fire',
      }).steps[0],
    ).toMatchObject({
      start: '1970-01-01T00:00:01.000Z',
      end: '1970-01-01T00:00:09.000Z',
      thresholdAt: '1970-01-01T00:00:02.000Z',
      signalAt: '1970-01-01T00:00:03.000Z',
      obscuration: 19,
      riseSeconds: 5,
      state: 'fire',
    }));
  it('hands on the rest', () =>
    expect(answer(nothing)).toMatchObject({
      format: 'beamkeep-proof/1',
      beam: 'B1',
      verdict: 'open',
      clean: 0.4,
      unexplained: [{ start: '1970-01-01T00:00:01.000Z', end: null, largest: 31 }],
      ...reading,
    }));
});
