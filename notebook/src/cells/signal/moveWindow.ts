import type { NumberedFinding, Reading, Window } from '../../bench/reading.js';
import type { Desk } from '../../state/desk.js';
import { wholeOf } from '../useLog.js';

/** The shortest window [ms]. */
const shortest = 10_000;

/** A window moved and kept within the log, or null when it holds the whole of it. */
export function kept(window: Window, whole: Window): Window | null {
  const length = Math.max(shortest, Math.min(window.to - window.from, whole.to - whole.from));
  if (length >= whole.to - whole.from) return null;
  const from = Math.max(whole.from, Math.min(window.from, whole.to - length));
  return { from, to: from + length };
}

/** A window about a finding: the stretch and some room around it. */
export function around({ start, end }: { start: number; end: number }, { from, to }: Window): Window | null {
  const room = Math.max(0.25 * (end - start), (to - from) / 400, 15 * 60_000);
  return kept({ from: start - room, to: end + room }, { from, to });
}

/** Findings of all beams in order of time. */
export const inOrder = ({ beams }: Reading): NumberedFinding[] =>
  beams.flatMap(({ findings }) => findings).sort((a, b) => a.start - b.start || a.number - b.number);

/** Chooses a finding and goes to its stretch. */
export function goTo(finding: NumberedFinding, desk: Desk, reading: Reading): void {
  desk.chosen.value = finding.number;
  desk.window.value = around(finding, wholeOf(reading));
}

/** What keys and buttons do to a window. Unknown keys do nothing and say so. */
export function moveWindow(key: string, desk: Desk, reading: Reading): boolean {
  const whole = wholeOf(reading);
  const { from, to } = desk.window.value ?? whole;
  const length = to - from;
  const middle = (from + to) / 2;
  const shift = (share: number): Window => ({ from: from + share * length, to: to + share * length });
  switch (key) {
    case 'ArrowLeft':
      desk.window.value = kept(shift(-0.25), whole);
      return true;
    case 'ArrowRight':
      desk.window.value = kept(shift(0.25), whole);
      return true;
    case '+':
    case '=':
      desk.window.value = kept({ from: middle - length / 4, to: middle + length / 4 }, whole);
      return true;
    case '-':
      desk.window.value = kept({ from: middle - length, to: middle + length }, whole);
      return true;
    case '0':
      desk.window.value = null;
      return true;
    case 'n':
      return step(desk, reading, 1);
    case 'p':
      return step(desk, reading, -1);
    default:
      return false;
  }
}

function step(desk: Desk, reading: Reading, by: 1 | -1): boolean {
  const findings = inOrder(reading);
  if (findings.length === 0) return true;
  const now = findings.findIndex(({ number }) => number === desk.chosen.value);
  const next = now < 0 ? (by > 0 ? 0 : findings.length - 1) : (now + by + findings.length) % findings.length;
  const finding = findings[next];
  if (finding) goTo(finding, desk, reading);
  return true;
}
