import { expect, it } from 'vitest';
import { given } from './given.js';

it('given leaves out what is undefined, and nothing else', () => {
  const kept = given({ height: undefined, tilt: 0, latching: false, name: '', bearing: Number.NaN });
  expect(Object.keys(kept)).toEqual(['tilt', 'latching', 'name', 'bearing']);
});
