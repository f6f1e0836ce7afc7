import { cleanDrift, signalAllowance } from '../../numbers/index.js';
import type { Change, DetectorState } from '../../response/index.js';
import type { Beam } from '../../site/index.js';
import { figure } from '../words/figure.js';
import type { Excursions } from './excursions.js';
import { takesLight } from './expected.js';
import { lossTaken } from './lossTaken.js';
import { panelOnly, panelShowing, panelShows, unwanted } from './panelReasons.js';
import { amountReasons, signalReasons } from './signalReasons.js';
import type { PanelEvent, StepEvidence, StepResult } from './stepResult.js';

/*
 * One step, judged. What the signal shows is judged by the settings of the site file, as the equipment would; what the
 * panel showed is judged by its own list, where there is one. A step that neither can show is left to a person.
 */

/** Judges one step. */
export function judged(
  evidence: StepEvidence,
  changes: readonly Change[],
  found: Excursions,
  beam: Beam,
  panel: readonly PanelEvent[] | undefined,
): StepResult {
  const { expected, excursion, from, to } = evidence;
  const none = {
    expected,
    start: from,
    end: Number.NaN,
    obscuration: Number.NaN,
    riseSeconds: Number.NaN,
    since: Number.NaN,
    signalAt: Number.NaN,
    state: stateAt(changes, to - 1),
  };
  if (expected.step.do === 'panel-alarm') return { ...none, ...panelOnly(expected.signal ?? 'fire', from, to, panel) };
  if (expected.step.do === 'reset') return { ...none, ...resetShown(evidence, changes, panel) };
  if (excursion === undefined)
    return {
      ...none,
      verdict: takesLight(expected.step) ? 'fail' : 'not shown',
      shownBy: takesLight(expected.step) ? 'signal' : 'nobody',
      reasons: [
        takesLight(expected.step)
          ? 'No stretch of the log shows this step: it was left out, or it took too little light to be seen.'
          : 'The step before it does not show, so nothing was taken away.',
      ],
    };
  if (expected.step.do === 'uncover')
    return { ...none, ...uncovered(evidence, found), start: excursion.end, end: excursion.end };

  const signals = changes.filter(
    ({ time, since, state }) => state !== 'normal' && since >= excursion.start && time < to,
  );
  const [signal] = signals;
  const shownAt = panel && panelShowing(expected, excursion.start, to, panel)?.time;
  const byPanel = panel && expected.signal && panelShows(expected, excursion.start, to, changes, panel);
  const doubtful = expected.doubts.length > 0;
  const signalled = [
    ...signalReasons(expected, excursion, signals, found, beam),
    ...(byPanel ?? []),
    ...(panel && expected.signal === undefined ? unwanted(excursion.start, to, panel) : []),
  ];
  const reasons = [...amountReasons(expected, excursion, found, beam), ...(doubtful ? [] : signalled)];
  return {
    ...none,
    verdict: reasons.length > 0 ? 'fail' : doubtful ? 'not shown' : 'pass',
    shownBy: panel ? 'panel' : 'signal',
    reasons:
      reasons.length > 0 ? reasons : doubtful ? expected.doubts.map(capital) : [praise(expected, signal, shownAt)],
    start: excursion.start,
    end: excursion.end,
    obscuration: lossTaken(excursion, found, beam),
    riseSeconds: excursion.riseSeconds,
    since: signal?.since ?? Number.NaN,
    signalAt: signal?.time ?? Number.NaN,
    state: stateLeft(changes, signals, Number.isNaN(excursion.end) ? to : excursion.end),
  };
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
const seconds = (milliseconds: number): string => `${figure(milliseconds / 1000)} s`;

/** The state that stands at an instant. */
function stateAt(changes: readonly Change[], time: number): DetectorState | undefined {
  return changes.findLast((change) => change.time <= time)?.state;
}

/** The state that a cover or a filter brought: a fault clears while the cover is taken away, and the step did show it. */
const stateLeft = (changes: readonly Change[], signals: readonly Change[], end: number): DetectorState | undefined =>
  signals.findLast(({ time }) => time < end)?.state ?? stateAt(changes, end - 1);

/** What a step that passed has shown. `shownAt`: when the panel's list has the signal [ms]; undefined without a list. */
function praise(expected: StepEvidence['expected'], signal: Change | undefined, shownAt: number | undefined): string {
  if (expected.signal === undefined || signal === undefined) return 'No signal came, as it must not.';
  const due = `${signal.state === 'fire' ? 'Fire' : 'Fault'} due ${seconds(signal.time - signal.since)} after the threshold was reached`;
  return shownAt === undefined
    ? `${due}, by the settings of the site file; what the panel showed is not in the log.`
    : `${due}; the panel's list has it after ${seconds(shownAt - signal.since)}.`;
}

function resetShown(
  { expected, resetAt, to }: StepEvidence,
  changes: readonly Change[],
  panel: readonly PanelEvent[] | undefined,
): Pick<StepResult, 'verdict' | 'reasons' | 'shownBy' | 'state'> {
  const state = stateAt(changes, Math.min(to - 1, (resetAt ?? to) + signalAllowance.value * 1000));
  if (resetAt === undefined)
    return {
      verdict: 'not shown',
      shownBy: 'nobody',
      state,
      reasons: ['No reset is told: write its time into the sheet, or a visit with work "reset" into the site file.'],
    };
  if (state !== expected.state)
    return {
      verdict: 'fail',
      shownBy: 'signal',
      state,
      reasons: [`After the reset the state due is ${state ?? 'not known'}, and it had to be ${expected.state}.`],
    };
  const again = panel?.find(({ time, what }) => what === 'fire' && time > resetAt && time < to);
  if (again)
    return {
      verdict: 'fail',
      shownBy: 'panel',
      state,
      reasons: ["The panel's list has a fire again after the reset."],
    };
  return {
    verdict: 'pass',
    shownBy: panel ? 'panel' : 'signal',
    state,
    reasons: ['Nothing is left that would signal again.'],
  };
}

function uncovered(
  { returned, excursion }: StepEvidence,
  { clean }: Excursions,
): Pick<StepResult, 'verdict' | 'reasons' | 'shownBy' | 'obscuration'> {
  if (returned === undefined || Number.isNaN(excursion?.end ?? Number.NaN))
    return {
      verdict: 'fail',
      shownBy: 'signal',
      obscuration: Number.NaN,
      reasons: [
        'The light does not come back before the log ends, or before the next step: ' +
          `it stands at ${figure(excursion?.last ?? Number.NaN)} % obscuration, and clean it was ${figure(clean)} %.`,
      ],
    };
  const off = returned - clean;
  if (Math.abs(off) <= cleanDrift.value)
    return {
      verdict: 'pass',
      shownBy: 'signal',
      obscuration: returned,
      reasons: [`The reading came back to ${figure(returned)} % obscuration, ${figure(Math.abs(off))} % from clean.`],
    };
  return {
    verdict: 'fail',
    shownBy: 'signal',
    obscuration: returned,
    reasons: [
      `The reading came back to ${figure(returned)} % obscuration, and clean it was ${figure(clean)} %: something was left ` +
        'in the path, or the head or the reflector was moved.',
    ],
  };
}
