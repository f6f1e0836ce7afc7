import { describe, expect, it } from 'vitest';
import type { SmokeScene } from './beam/smokeOnBeam.js';
import { squaredFire, steadyFire } from './fire/designFire.js';
import { fuelNamed } from './fire/fuel.js';
import { leftOut, outOfReach, whoDecides } from './reach.js';

const hall: SmokeScene = {
  fire: steadyFire(100, fuelNamed('wood')),
  diameter: 0.8,
  ceiling: 12,
  area: 1800,
  beam: { layout: 'reflective', separation: 60, height: 11.6, aside: 4 },
  specificExtinction: 6258,
};

describe('outOfReach', () => {
  it('is silent where the laws have data', () => expect(outOfReach(hall, 600)).toEqual([]));
  it('tells a ceiling, a distance, a floor and a fire that lie outside', () => {
    const told = outOfReach(
      {
        ...hall,
        fire: { ...squaredFire({ growth: 'fast' }, fuelNamed('smouldering')) },
        ceiling: 20,
        area: 10000,
        beam: { ...hall.beam, aside: 45, height: 3 },
      },
      600,
    );
    expect(told).toHaveLength(6);
    expect(told[0]).toContain('from 4.6 to 15.5 m');
    expect(told[1]).toContain('45 m aside');
    expect(told[2]).toContain('here it is 25');
    expect(told[3]).toContain('17 m below the ceiling, lower than a ceiling jet');
    expect(told[4]).toContain('flames reach the beam');
    expect(told[5]).toContain('draughts');
  });
  it('what is left out and who decides is always at hand', () => {
    expect(leftOut.length).toBeGreaterThan(3);
    expect(whoDecides).toContain('licensed people');
  });
});
