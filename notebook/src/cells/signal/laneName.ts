import type { Desk } from '../../state/desk.js';

/** What a beam's lane is found by on the page: two logs of one sheet can have beams of one name. */
export const laneName = ({ cell }: Desk, beam: string): string => `${cell} ${beam}`;

/** Brings the lane of a beam into sight; of a beam that is switched off, the first lane there is. */
export function showLane(desk: Desk, beam: string | null): void {
  const lanes = [...document.querySelectorAll('[data-lane]')].map((lane) => ({
    lane,
    name: lane.getAttribute('data-lane') ?? '',
  }));
  const mine = lanes.filter(({ name }) => name.startsWith(laneName(desk, '')));
  const found = mine.find(({ name }) => beam !== null && name === laneName(desk, beam)) ?? mine[0];
  found?.lane.scrollIntoView({ block: 'start' });
}
