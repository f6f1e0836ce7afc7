/*
 * Where only work makes dirt, a day off adds none. The soiling clock counts days by how much they soil: it rises by one
 * a day in the mean of a week, faster on days of work and slowly on days of rest. The rest is one day or two in a row.
 */

/** Days counted by how much they soil; takes and gives days since 1970-01-01 UTC. */
export type SoilingClock = (at: number) => number;

/** The clock of a week without rest. */
export const evenWeek: SoilingClock = (at) => at;

/** What a day of rest soils, as a share of a day of work. */
const restfulShare = 0.15;

/**
 * Clock of a week with days of rest.
 *
 * @param first first day of rest, counted from Thursday (0), the first day of 1970
 * @param rest number of days of rest in a row, 1 or 2
 */
export function weekWithRest(first: number, rest: number): SoilingClock {
  const work = 7 / (7 - rest + rest * restfulShare);
  const counted = [0];
  for (let weekday = 0; weekday < 7; weekday++) {
    const resting = (weekday - first + 7) % 7 < rest;
    counted.push((counted[weekday] as number) + (resting ? restfulShare * work : work));
  }
  return (at) => {
    const weekStart = 7 * Math.floor(at / 7);
    const weekday = Math.floor(at - weekStart);
    const [here, next] = [counted[weekday] as number, counted[weekday + 1] as number];
    return weekStart + here + (at - weekStart - weekday) * (next - here);
  };
}

/** Every week that is thought of: without rest first. */
export const weeks: readonly SoilingClock[] = [
  evenWeek,
  ...[1, 2].flatMap((rest) => [0, 1, 2, 3, 4, 5, 6].map((first) => weekWithRest(first, rest))),
];
