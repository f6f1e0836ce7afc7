import { day } from '../columns/index.js';

/** Times of one recurring cause no further apart than this are one finding. */
const apart = 7.5 * day;

/** A spell of a recurring cause. */
export interface Spell {
  readonly start: number;
  readonly end: number;
  readonly episodes: (readonly [number, number])[];
}

/** Joins times in order into spells whose neighbours are no more than 7.5 days apart. */
export function spells(episodes: readonly (readonly [number, number])[]): Spell[] {
  const joined: { start: number; end: number; episodes: (readonly [number, number])[] }[] = [];
  for (const episode of [...episodes].sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last !== undefined && episode[0] - last.end <= apart) {
      last.episodes.push(episode);
      last.end = Math.max(last.end, episode[1]);
    } else joined.push({ start: episode[0], end: episode[1], episodes: [episode] });
  }
  return joined;
}
