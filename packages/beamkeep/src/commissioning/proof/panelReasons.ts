import { signalAllowance } from '../../numbers/index.js';
import type { Change } from '../../response/index.js';
import { figure } from '../words/figure.js';
import type { ExpectedStep } from './expected.js';
import type { PanelEvent, StepResult } from './stepResult.js';

/** The line of the panel's list that has the signal of a step. */
export function panelShowing(
  { signal }: ExpectedStep,
  from: number,
  to: number,
  panel: readonly PanelEvent[],
): PanelEvent | undefined {
  const allowance = signalAllowance.value * 1000;
  return panel.find(({ time, what }) => what === signal && time >= from - allowance && time <= to + allowance);
}

/** Whether the panel's list has the signal, and in time. */
export function panelShows(
  expected: ExpectedStep,
  from: number,
  to: number,
  changes: readonly Change[],
  panel: readonly PanelEvent[],
): string[] {
  const { signal, window } = expected;
  const due = changes.find(({ time, since, state }) => state === signal && since >= from && time <= to);
  const allowance = signalAllowance.value * 1000;
  const shown = panelShowing(expected, from, to, panel);
  if (shown === undefined) return due ? [`The panel's list has no ${signal} for this step.`] : [];
  if (due === undefined || window === undefined) return [];
  const after = shown.time - due.since;
  const early = window.from * 1000 - allowance;
  if (after >= early && after <= window.to * 1000) return [];
  return [
    `The panel's list has ${signal} ${figure(after / 1000)} s after the threshold was reached, and ${figure(window.from)} to ` +
      `${figure(window.to)} s were expected: its delay, or its clock, is not what was told.`,
  ];
}

/** Signals in the panel's list where none may come. */
export function unwanted(from: number, to: number, panel: readonly PanelEvent[]): string[] {
  const came = panel.find(({ time, what }) => (what === 'fire' || what === 'fault') && time >= from && time <= to);
  return came ? [`The panel's list has a ${came.what} in this step, and none was to come.`] : [];
}

/** A step that only the panel can show. */
export function panelOnly(
  signal: 'fire' | 'fault',
  from: number,
  to: number,
  panel: readonly PanelEvent[] | undefined,
): Pick<StepResult, 'verdict' | 'reasons' | 'shownBy' | 'signalAt'> {
  const shown = panel?.find(({ time, what }) => what === signal && !(time < from) && !(time > to));
  if (shown) return { verdict: 'pass', shownBy: 'panel', signalAt: shown.time, reasons: ["The panel's list has it."] };
  return {
    verdict: panel ? 'fail' : 'not shown',
    shownBy: panel ? 'panel' : 'nobody',
    signalAt: Number.NaN,
    reasons: [
      panel
        ? `The panel's list has no ${signal} here.`
        : 'The received signal does not show this: write down what the panel showed, or give its list with --events.',
    ],
  };
}
