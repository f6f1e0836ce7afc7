/*
 * Whether samples swing to and fro between the level before and a depth. A shake and noise come back all the time, and what
 * stays off among them stays no longer than chance has it; smoke takes from every sample while it stands.
 */

/** How far a row stands off the level before, as a share of a depth. */
type Off = (row: number) => number;

/** Share of the depth under which a sample has come back, least share that do, how seldom chance makes the longest run. Own choice. */
const backWithin = 0.25;
const backShare = 0.15;
const backChance = 0.05;

/** How long each run of rows off the level is, the shortest first; none where they do not come back all the time. */
function runsOff(off: Off, first: number, end: number): number[] {
  const runs: number[] = [];
  let run = 0;
  let stayed = 0;
  for (let i = first; i < end; i++) {
    if (off(i) > backWithin) {
      run++;
      stayed++;
    } else if (run > 0) {
      runs.push(run);
      run = 0;
    }
  }
  if (run > 0) runs.push(run);
  runs.sort((a, b) => a - b);
  const share = stayed / (end - first);
  const longest = Math.log((end - first) / backChance) / -Math.log(share);
  return share <= 1 - backShare && (runs.at(-1) ?? 0) <= longest ? runs : [];
}

/** Whether the rows `first` to `end` (excluded) come back all the time. */
export const comesBack = (off: Off, first: number, end: number): boolean => runsOff(off, first, end).length > 0;

/**
 * Rows looked at on either side; share of the depth from which one stands as deep, and fewest that must; longest that half
 * of the runs off the level may be. Own choice.
 */
const swingBeside = 24;
const swingDeep = 0.7;
const swingOthers = 3;
const swingRun = 2;

/** Whether the rows `from` to `to` are part of a swing that goes on beside them, of so many rows in all. */
export function isOfSwing(off: Off, from: number, to: number, rows: number): boolean {
  const [first, end] = [Math.max(0, from - swingBeside), Math.min(rows, to + 1 + swingBeside)];
  const runs = runsOff(off, first, end);
  if (runs.length === 0 || (runs[runs.length >> 1] as number) > swingRun) return false;
  let others = 0;
  for (let i = first; i < end; i++) if ((i < from || i > to) && off(i) >= swingDeep) others++;
  return others >= swingOthers;
}
