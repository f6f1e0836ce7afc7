import type { Window } from '../bench/reading.js';
import type { NameOnBar } from './namesOnBars.js';

/*
 * Bars of a row too full for names. None is left without a mark that leads to the list: each has its number, and those
 * that stand too near to each other for that have one mark together, "24, 25" or "24…31".
 */

/** A bar of the row: its ends are those that are drawn. */
export interface Crowded {
  readonly number: number;
  readonly start: number;
  readonly end: number;
}

/** A mark, and the bar that it stands in, if in one. */
type Mark<Bar> = Pick<NameOnBar, 'name' | 'at' | 'ends'> & { readonly within: Bar | null };

/**
 * Marks of the bars in a full row: in a bar that holds its own, else after the bars, and before them where the edge of
 * the plot is too near.
 *
 * @param bars in order of their start
 * @param window the stretch in sight
 * @param perPixel length of a pixel [ms]
 */
export function crowdNumbers<Bar extends Crowded>(bars: readonly Bar[], window: Window, perPixel: number): Mark<Bar>[] {
  const room = (group: readonly Crowded[]): number => (nameOf(group).length * 6.6 + 6) * perPixel;
  const holds = (group: readonly Crowded[]): boolean =>
    group.length === 1 && endOf(group) - startOf(group) > room(group);
  const reach = (group: readonly Crowded[]): number => endOf(group) + (holds(group) ? 0 : room(group));
  const groups: Bar[][] = [];
  for (const bar of bars) {
    const near = groups.at(-1);
    if (near && bar.start < reach(near)) near.push(bar);
    else groups.push([bar]);
  }
  return groups.map((group, at): Mark<Bar> => {
    const last = groups[at - 1];
    const free = last ? reach(last) : window.from;
    const name = nameOf(group);
    const [only = null] = group;
    if (holds(group)) return { name, at: startOf(group), within: only };
    if (reach(group) <= window.to) return { name, at: endOf(group), within: null };
    const before = startOf(group) - room(group) >= free;
    return { name, at: before ? startOf(group) : window.to, ends: true, within: null };
  });
}

const startOf = (group: readonly Crowded[]): number => Math.min(...group.map(({ start }) => start));
const endOf = (group: readonly Crowded[]): number => Math.max(...group.map(({ end }) => end));

function nameOf(group: readonly Crowded[]): string {
  const numbers = group.map(({ number }) => number);
  return numbers.length < 3 ? numbers.join(', ') : `${Math.min(...numbers)}…${Math.max(...numbers)}`;
}
