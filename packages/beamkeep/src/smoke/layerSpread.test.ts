import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hallAir } from './air.js';
import { growthTime } from './fire/growth.js';
import { layerSpread } from './layerSpread.js';
import { flowFactor } from './plume/heskestad.js';

const [ceiling, area, radiated] = [10, 100, 0.3];
const shape = area / ceiling ** 2;

/** Where the closed form of Zukoski has the face, when the plume of a cube root of heat, summed over time, has flowed. */
const closedForm = (summed: number): number =>
  (ceiling ** (-2 / 3) +
    (2 / 3) * ((flowFactor(hallAir) * Math.cbrt(1 - radiated) * summed) / hallAir.density / area)) **
  -1.5;

describe('layerSpread', () => {
  it('NFPA 92, steady fire: z/H = 1.11 - 0.28 ln(t Q^(1/3) H^(-4/3) (A/H^2)^(-1)) at the time of the face', () => {
    const heat = 500;
    for (const second of [20, 40, 60]) {
      const tau = (second * Math.cbrt(heat)) / ceiling ** (4 / 3) / shape;
      const { lowest } = layerSpread(closedForm(second * Math.cbrt(heat)), ceiling, radiated);
      expect(lowest).toBeCloseTo(ceiling * (1.11 - 0.28 * Math.log(tau)), 9);
    }
  });

  it('NFPA 92, growing fire: z/H = 0.91 (t tg^(-2/5) H^(-4/5) (A/H^2)^(-3/5))^(-1.45) at the time of the face', () => {
    for (const second of [46, 50, 54]) {
      const tau = second / growthTime('fast') ** 0.4 / ceiling ** 0.8 / shape ** 0.6;
      const summed = (3 / 5) * Math.cbrt(1055) * (second / growthTime('fast')) ** (2 / 3) * second;
      const { highest } = layerSpread(closedForm(summed), ceiling, radiated);
      expect(highest).toBeCloseTo(ceiling * 0.91 * tau ** -1.45, 9);
    }
  });

  it('law: the zone model lies within, and a face that sinks is nowhere followed by a band that rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 30, noNaN: true }),
        fc.double({ min: 0.02, max: 0.999, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (top, share, radiated) => {
          const face = share * top;
          const now = layerSpread(face, top, radiated);
          const later = layerSpread(0.95 * face, top, radiated);
          expect(now.lowest).toBeLessThanOrEqual(face);
          expect(now.highest).toBeGreaterThanOrEqual(face);
          expect(now.highest).toBeLessThanOrEqual(top);
          expect(later.lowest).toBeLessThanOrEqual(now.lowest);
          expect(later.highest).toBeLessThanOrEqual(now.highest);
        },
      ),
      { seed: 5 },
    );
  });

  it('has no width where there is no layer, and says what the head of its file says', () => {
    expect(layerSpread(10, 10, 0.3)).toEqual({ lowest: 10, highest: 10 });
    const shares = [0.8, 0.6, 0.4].map((face) => layerSpread(face, 1, 0.3, hallAir));
    expect(shares.map(({ lowest }) => Number(lowest.toFixed(2)))).toEqual([0.68, 0.42, 0.22]);
    expect(shares.map(({ highest }) => Number(highest.toFixed(2)))).toEqual([1, 0.6, 0.4]);
  });
});
