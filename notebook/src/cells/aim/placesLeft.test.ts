import { describe, expect, it } from 'vitest';
import { placesLeft } from './placesLeft.js';

describe('placesLeft', () => {
  it.each([
    ['0,05 -0,05', [0.05, -0.05]],
    ['0.5; 1', [0.5, 1]],
    [' ', []],
    ['somewhere', []],
  ])('%j', (typed, places) => expect(placesLeft(typed)).toEqual(places));
});
