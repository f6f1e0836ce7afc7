import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { linearStep, scaleOf, toLevel } from './scale.js';

const beamOf = (more: object) => {
  const [beam] = parseSite({
    format: 'beamkeep-site/1',
    beams: [{ id: 'B1', layout: 'reflective', separation: 50, ...more }],
  }).beams;
  if (beam === undefined) throw new Error('no beam');
  return beam;
};

describe('toLevel', () => {
  it('takes off what does not come by the beam', () => {
    expect(toLevel(beamOf({ signalUnit: 'counts', cleanAir: 2012, covered: 12 }), 2012)(1012)).toBe(0.5);
    expect(toLevel(beamOf({ covered: 1 }), 100)(1)).toBe(0);
  });
  it('obscuration and decibels are turned into received power', () => {
    expect(toLevel(beamOf({ signalUnit: 'obscuration' }), 0)(35)).toBeCloseTo(0.65, 15);
    expect(toLevel(beamOf({ signalUnit: 'decibels' }), 0)(-10)).toBeCloseTo(0.1, 15);
    expect(toLevel(beamOf({ signalUnit: 'decibels', covered: -20 }), 0)(-20)).toBeCloseTo(0, 15);
  });
  it('missing stays missing', () => expect(toLevel(beamOf({}), 100)(Number.NaN)).toBeNaN());
});

describe('scaleOf', () => {
  it('takes the reading in clean air from the log only where the site does not give it', () => {
    const time = Float64Array.of(0, 600_000, 1_200_000);
    const readings = Float64Array.of(2000, 2000, 2000);
    expect(scaleOf(beamOf({ signalUnit: 'counts', cleanAir: 2100 }), time, readings)).toEqual({
      clean: 2100,
      covered: 0,
      assumed: [],
    });
    const found = scaleOf(beamOf({ signalUnit: 'counts' }), time, readings);
    expect(found.clean).toBe(2000);
    expect(found.assumed).toEqual(["cleanAir 2000 counts, from the log's first good stretch (1970-01-01)"]);
  });
});

describe('linearStep', () => {
  it('a step of 0.05 dB is 1.158 % near clean air', () =>
    expect(linearStep(0.05, beamOf({ signalUnit: 'decibels' }), 1)).toBeCloseTo(0.011579, 6));
  it('a step of obscuration is a hundredth of itself', () =>
    expect(linearStep(0.5, beamOf({ signalUnit: 'obscuration' }), 1)).toBe(0.005));
});
