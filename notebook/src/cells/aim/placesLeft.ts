import { numberIn } from '../../parts/numberIn.js';

/**
 * Where the head was left, as typed: one number an axis, points or commas.
 *
 * @example placesLeft('0,05 -0,05') // [0.05, -0.05]
 */
export const placesLeft = (typed: string): number[] =>
  typed
    .split(/[;/]|\s+/)
    .map(numberIn)
    .filter((place) => !Number.isNaN(place));
