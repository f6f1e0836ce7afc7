import { describe, expect, it } from 'vitest';
import { plumeBeside } from './besideWalls.js';

describe('plumeBeside', () => {
  it('CFAST Technical Reference Guide: a wall leaves 0.63, a corner 0.40 of the entrainment of a free fire', () => {
    const flow = (place: 'free' | 'wall' | 'corner') =>
      plumeBeside(place, { heat: 0.1, radiativeShare: 0, diameter: 1e-6 }, 10).massFlow;
    // The second term of the mass flow, 0.00192 Qc, does not change: nearly nothing for so small a fire.
    expect(flow('wall') / flow('free')).toBeCloseTo(0.63, 2);
    expect(flow('corner') / flow('free')).toBeCloseTo(0.4, 2);
  });
  it('is warmer there', () => {
    const rise = (place: 'free' | 'wall' | 'corner') =>
      plumeBeside(place, { heat: 200, radiativeShare: 0.35, diameter: 0.5 }, 8).rise;
    expect(rise('wall')).toBeGreaterThan(rise('free'));
    expect(rise('corner')).toBeGreaterThan(rise('wall'));
  });
});
