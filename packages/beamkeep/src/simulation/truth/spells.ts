import { day } from '../../columns/index.js';
import { rank } from '../grid.js';
import type { CauseWord } from './causeWord.js';
import type { Episode, LabelledCause, TraceOfCause } from './truthFile.js';
import { brief, iso } from './viewed.js';

/** One time that a recurring cause came [ms], and how strongly [share of clean air]. */
export interface Came {
  readonly from: number;
  readonly to: number;
  readonly size: number;
}

/** Times no further apart than this are one spell. */
const apart = 7.5 * day;

/** Groups the times that a cause came into spells. */
export function spells(times: readonly Came[]): Came[][] {
  const found: Came[][] = [];
  let current: Came[] = [];
  for (const time of [...times].sort((a, b) => a.from - b.from)) {
    const before = current[current.length - 1];
    if (before && time.from - before.to > apart) {
      found.push(current);
      current = [];
    }
    current.push(time);
  }
  if (current.length > 0) found.push(current);
  return found;
}

/**
 * Labels of a recurring cause: one a spell of at least `least` times, with its episodes; smaller spells are traces.
 *
 * @param cause the word
 * @param times every time that passed the rule
 * @param least times that make a spell
 * @param unit of the magnitude, which is the median over the spell
 * @param more what else the label says
 */
export function labelSpells(
  cause: CauseWord,
  times: readonly Came[],
  least: number,
  unit: string,
  more: Partial<LabelledCause> = {},
): { causes: LabelledCause[]; traces: TraceOfCause[] } {
  const causes: LabelledCause[] = [];
  const traces: TraceOfCause[] = [];
  for (const spell of spells(times)) {
    const [first, last] = [spell[0], spell[spell.length - 1]];
    if (!first || !last) continue;
    const magnitude = brief(
      100 *
        rank(
          spell.map(({ size }) => size),
          0.5,
        ),
    );
    if (spell.length < least) {
      traces.push({ cause, magnitude, unit, why: 'came too rarely', near: true });
      continue;
    }
    const episodes = spell.map(({ from, to }): Episode => [iso(from), iso(to)]);
    causes.push({ cause, start: iso(first.from), end: iso(last.to), magnitude, unit, episodes, ...more });
  }
  return { causes, traces };
}
