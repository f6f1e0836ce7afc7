import { aimLoss, type Lobe } from '../lobe.js';

/** The level at a turn from the offset, over the level at the offset. */
const level = (lobe: Lobe, [x, y]: readonly [number, number], direction: number, turn: number): number =>
  10 ** ((aimLoss(lobe, x, y) - aimLoss(lobe, x + turn * Math.cos(direction), y + turn * Math.sin(direction))) / 10);

/**
 * Turn in a direction that costs a share of the level [half-angles], by halving; at most 3.
 *
 * @param lobe shape of the lobe
 * @param offset where the head points before [half-angles]
 * @param direction of the turn, counter-clockwise from sideways [rad]
 * @param lost share of the level to be lost, 0 to 1
 */
export function turnFor(lobe: Lobe, offset: readonly [number, number], direction: number, lost: number): number {
  let [low, high] = [0, 3];
  // Past the peak the level falls for good: look only there.
  const along = -(offset[0] * Math.cos(direction) + offset[1] * Math.sin(direction));
  if (along > 0) [low, high] = [along, along + 3];
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (1 - level(lobe, offset, direction, middle) < lost) low = middle;
    else high = middle;
  }
  return high;
}

/** Swing from trough to crest that moves the level by a share in a day [half-angles], about the offset; at most 1.5. */
export function swingFor(lobe: Lobe, offset: readonly [number, number], direction: number, share: number): number {
  let [low, high] = [0, 1.5];
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    const levels = [-0.5, -0.25, 0, 0.25, 0.5].map((part) => level(lobe, offset, direction, part * middle));
    if (Math.max(...levels) - Math.min(...levels) < share) low = middle;
    else high = middle;
  }
  return high;
}
