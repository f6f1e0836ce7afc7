import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { lossTaken } from './lossTaken.js';

const taken = (held: number, clean: number, settings: object = {}) => {
  const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...settings }] }).beams;
  if (!beam) throw new Error('no beam');
  return lossTaken({ held }, { clean }, beam);
};

describe('lossTaken', () => {
  it('derived: 48 % seen through 20 % of dirt is a cover of 35 %', () => expect(taken(48, 20)).toBeCloseTo(35, 10));
  it('derived: 40 % seen where a fifth stays without the beam is a cover of 50 %', () =>
    expect(taken(40, 0, { covered: 20 })).toBeCloseTo(50, 10));
  it('derived: both at once, 40 % over 20 % of dirt with a fifth that stays, is a cover of a third', () =>
    expect(taken(40, 20, { covered: 20 })).toBeCloseTo(100 / 3, 10));
  it('equipment that takes the residue off sees the true loss', () =>
    expect(taken(40, 0, { covered: 20, coveredSubtracted: true })).toBeCloseTo(40, 10));
});
