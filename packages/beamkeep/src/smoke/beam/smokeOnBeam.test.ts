import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { specificExtinction } from '../../attenuation/index.js';
import { curveFire, squaredFire, steadyFire } from '../fire/designFire.js';
import { fuelNamed, ownFuel } from '../fire/fuel.js';
import { type SmokeScene, smokeOnBeam, smokeStages } from './smokeOnBeam.js';

const wood = fuelNamed('wood');
const hall: SmokeScene = {
  fire: squaredFire({ growth: 'medium' }, wood),
  diameter: 0.8,
  ceiling: 12,
  area: 1800,
  beam: { layout: 'reflective', separation: 60, height: 11.6, aside: 4 },
  specificExtinction: specificExtinction('flaming', 880),
};
const crossed = (scene: SmokeScene, decibels = 1.871, seconds = 500): number => {
  const at = smokeOnBeam(scene, seconds).decibels.findIndex((loss) => loss >= decibels);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
};
const beam = (change: Partial<SmokeScene['beam']>) => ({ ...hall.beam, ...change });
const somewhere = fc.record({
  coefficient: fc.double({ min: 0.005, max: 0.2, noNaN: true }),
  aside: fc.double({ min: 0, max: 9, noNaN: true }),
  ceiling: fc.double({ min: 5, max: 25, noNaN: true }),
  below: fc.double({ min: 0.1, max: 3, noNaN: true }),
});
const scene = (place: { coefficient: number; aside: number; ceiling: number; below: number }): SmokeScene => ({
  ...hall,
  fire: squaredFire({ coefficient: place.coefficient }, wood),
  ceiling: place.ceiling,
  beam: beam({ aside: place.aside, height: place.ceiling - place.below }),
});

describe('smokeOnBeam', () => {
  it('begins clear, and sees the plume, the jet, then the layer', () => {
    const under = smokeOnBeam({ ...hall, area: 600, beam: beam({ aside: 0, height: 8 }) }, 400);
    expect(under.decibels[0]).toBe(0);
    const seen = (at: number) => smokeStages[under.from[at] as number];
    expect(seen(80)).toBe('plume');
    expect(seen(400)).toBe('layer');
    const roof = smokeOnBeam(hall, 60);
    expect(smokeStages[roof.from[60] as number]).toBe('jet');
  });

  it('law: a reflective beam loses twice the decibels of an end-to-end one', () => {
    const once = smokeOnBeam({ ...hall, beam: beam({ layout: 'end-to-end' }) }, 200);
    const twice = smokeOnBeam(hall, 200);
    once.decibels.forEach((loss, i) => {
      expect(twice.decibels[i]).toBeCloseTo(2 * loss, 9);
    });
  });

  it('law: the loss in decibels is in proportion to yield and to extinction', () => {
    const sooty = {
      ...hall,
      fire: squaredFire({ growth: 'medium' }, ownFuel({ sootYield: 0.03, heatOfCombustion: 12.4 })),
    };
    const plain = smokeOnBeam(hall, 200);
    const double = smokeOnBeam(sooty, 200);
    const half = smokeOnBeam({ ...hall, specificExtinction: hall.specificExtinction / 2 }, 200);
    plain.decibels.forEach((loss, i) => {
      expect(double.decibels[i]).toBeCloseTo(2 * loss, 9);
      expect(half.decibels[i]).toBeCloseTo(loss / 2, 9);
    });
  });

  it('law: a fire that grows faster is seen no later', () => {
    fc.assert(
      fc.property(somewhere, (place) => {
        expect(crossed(scene({ ...place, coefficient: 2 * place.coefficient }))).toBeLessThanOrEqual(
          crossed(scene(place)),
        );
      }),
      { seed: 5, numRuns: 25, endOnFailure: true },
    );
  });

  it('law: a fire farther aside is seen no earlier', () => {
    fc.assert(
      fc.property(somewhere, (place) => {
        // The beam in the jet is summed in pieces: 3 s are what the front needs to cross one.
        expect(crossed(scene({ ...place, aside: place.aside + 2 }))).toBeGreaterThanOrEqual(crossed(scene(place)) - 3);
      }),
      { seed: 5, numRuns: 25, endOnFailure: true },
    );
  });

  it('law: a longer beam in the same hall is no later', () => {
    fc.assert(
      fc.property(somewhere, (place) => {
        const short = scene(place);
        const long = { ...short, beam: { ...short.beam, separation: 90 } };
        expect(crossed(long)).toBeLessThanOrEqual(crossed(short));
      }),
      { seed: 5, numRuns: 25, endOnFailure: true },
    );
  });

  it('law: a higher hall is later, the beam as far below its roof', () => {
    for (const ceiling of [6, 9, 12, 16, 20]) {
      const at = (height: number) => crossed({ ...hall, ceiling: height, beam: beam({ height: height - 0.4 }) });
      expect(at(ceiling + 3)).toBeGreaterThan(at(ceiling));
    }
  });

  it('warm roof air keeps the smoke from the roof until the fire has grown; a lower beam sees it sooner', () => {
    const foam = squaredFire({ growth: 'medium' }, fuelNamed('polyurethaneFoam'));
    const summer = { ...hall, fire: foam, ceiling: 20, gradient: 1 };
    const roof = crossed({ ...summer, beam: beam({ height: 19.6, aside: 1 }) });
    const lower = crossed({ ...summer, beam: beam({ height: 8, aside: 1 }) });
    expect(roof).toBeGreaterThan(crossed({ ...hall, fire: foam, ceiling: 20, beam: beam({ height: 19.6, aside: 1 }) }));
    expect(lower).toBeLessThan(roof);
    expect(crossed({ ...hall, ceiling: 20, roofRise: 10, beam: beam({ height: 19.6 }) })).toBeGreaterThan(60);
  });

  it('law: the layer gives an early beam no less, a late one no more; they part only where the layer does', () => {
    fc.assert(
      fc.property(somewhere, fc.double({ min: 0.25, max: 0.9, noNaN: true }), (place, share) => {
        const here = scene(place);
        const lower = { ...here, beam: { ...here.beam, height: share * here.ceiling } };
        const [early, usual, late] = (['early', 'usual', 'late'] as const).map(
          (layerArrival) => smokeOnBeam({ ...lower, layerArrival }, 400).decibels,
        );
        usual?.forEach((loss, second) => {
          expect(early?.[second]).toBeGreaterThanOrEqual(loss);
          expect(late?.[second]).toBeLessThanOrEqual(loss);
        });
      }),
      { seed: 5, numRuns: 25, endOnFailure: true },
    );
    const open = { ...hall, area: Number.POSITIVE_INFINITY };
    expect(smokeOnBeam({ ...open, layerArrival: 'early' }, 200)).toEqual(smokeOnBeam(open, 200));
  });

  it('beside a fire and below the jet, the layer alone is waited for: its band is tens of seconds wide', () => {
    const low = { ...hall, beam: beam({ height: 9, aside: 7.5 }) };
    const [early, usual, late] = (['early', 'usual', 'late'] as const).map((layerArrival) =>
      crossed({ ...low, layerArrival }),
    );
    expect(usual).toBeGreaterThan((early ?? Number.NaN) + 10);
    expect(late).toBeGreaterThan((usual ?? Number.NaN) + 10);
  });

  it('nothing gathers under a roof without end', () => {
    const open = smokeOnBeam({ ...hall, area: Number.POSITIVE_INFINITY, beam: beam({ height: 4, aside: 8 }) }, 300);
    expect(Math.max(...open.decibels)).toBeLessThan(0.01);
  });

  it('is not known once the fire is not', () => {
    const fire = curveFire(
      [
        [0, 0],
        [60, 200],
      ],
      wood,
    );
    const { decibels } = smokeOnBeam({ ...hall, fire }, 70);
    expect(decibels[60]).toBeGreaterThan(0);
    expect(decibels[61]).toBeNaN();
  });

  it('clears under a fire that is out', () => {
    const fire = curveFire(
      [
        [0, 100],
        [60, 100],
        [61, 0],
        [200, 0],
      ],
      wood,
    );
    const open = { ...hall, fire, area: Number.POSITIVE_INFINITY, beam: beam({ aside: 0, height: 6 }) };
    const { decibels } = smokeOnBeam(open, 200);
    expect(decibels[50]).toBeGreaterThan(1);
    expect(decibels[190]).toBe(0);
  });

  it('says what must change', () => {
    const run = (change: Partial<SmokeScene>, seconds = 10) => smokeOnBeam({ ...hall, ...change }, seconds);
    expect(() => run({}, 0.5)).toThrow('0.5 s must be whole');
    expect(() => run({ diameter: 0 })).toThrow('diameter 0 m');
    expect(() => run({ area: 0 })).toThrow('floor area 0 m²');
    expect(() => run({ beam: beam({ height: 13 }) })).toThrow(
      "beam height 13 m must be more than 0 and at most the ceiling's, 12 m",
    );
    expect(() => run({ beam: beam({ along: 2 }) })).toThrow('along 2 must be from 0');
    expect(() => run({ gradient: -1 })).toThrow('temperature gradient -1 K/m');
    expect(() => run({ fire: steadyFire(10, wood), specificExtinction: 0 })).toThrow('specific extinction 0 m²/kg');
  });
});
