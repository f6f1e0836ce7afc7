import type { EventTold } from '../../bench/reading.js';

/*
 * On paper, entries of a panel's list that say the same time after time are one row: how often, from when to when, at
 * which times, and between which ends the figures lie in which their words differ.
 */

/** Entries that follow each other in the list and differ in time and figures only. */
export interface EventRun {
  readonly events: readonly [EventTold, ...EventTold[]];
  /** The words of all: where their figures differ, the least and the greatest. */
  readonly words: string;
}

/** As few rows are left as they are. */
const fewest = 3;

/** A figure, and no part of a clock time or a date. */
const figures = /(?<![\d:.-])(\d+(?:\.\d+)?)(?![\d:-]|\.\d)/;

/**
 * The list as it stands on paper.
 *
 * @param events in their order
 */
export function eventRuns(events: readonly EventTold[]): EventRun[] {
  const runs: [EventTold, ...EventTold[]][] = [];
  for (const event of events) {
    const run = runs.at(-1);
    if (run && sameBut(run[0], event)) run.push(event);
    else runs.push([event]);
  }
  return runs
    .flatMap((run): [EventTold, ...EventTold[]][] => (run.length < fewest ? run.map((event) => [event]) : [run]))
    .map((run) => ({ events: run, words: wordsOf(run) }));
}

const partsOf = ({ words }: EventTold): string[] => words.split(figures);

/** What two entries must share to be of one run. */
const kindOf = (event: EventTold): string =>
  JSON.stringify([
    event.beam,
    event.what,
    event.state,
    event.finding?.number,
    partsOf(event).filter((_, at) => at % 2 === 0),
  ]);

const sameBut = (one: EventTold, other: EventTold): boolean => kindOf(one) === kindOf(other);

function wordsOf(run: readonly EventTold[]): string {
  const all = run.map(partsOf);
  return (all[0] ?? [])
    .map((part, at) => {
      if (at % 2 === 0) return part;
      const found = all.map((parts) => parts[at] ?? '').sort((a, b) => Number(a) - Number(b));
      const [least = '', greatest = ''] = [found[0], found.at(-1)];
      return Number(least) === Number(greatest) ? part : `${least} to ${greatest}`;
    })
    .join('');
}
