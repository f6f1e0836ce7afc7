import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day, hour } from '../columns/index.js';
import { angleToSun, sunPosition, sunPositions } from './sun.js';

const instant = fc.integer({ min: Date.UTC(2000, 0, 1), max: Date.UTC(2060, 0, 1) });
const latitude = fc.double({ min: -66, max: 66, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });

describe('sunPosition', () => {
  it('law: many instants at once are the instants one by one', () => {
    const time = Float64Array.from({ length: 50 }, (_, i) => Date.UTC(2027, 3, 1) + i * hour);
    const { azimuth, elevation, refracted } = sunPositions(time, 41.1, -8.6);
    time.forEach((t, i) => {
      expect({ azimuth: azimuth[i], elevation: elevation[i], refracted: refracted[i] }).toEqual(
        sunPosition(t, 41.1, -8.6),
      );
    });
  });
  it('law: the air lifts the sun, by half a degree at the horizon and by nothing overhead', () => {
    fc.assert(
      fc.property(instant, latitude, longitude, (time, lat, lon) => {
        const { elevation, refracted } = sunPosition(time, lat, lon);
        expect(refracted - elevation).toBeGreaterThan(-0.01);
        expect(refracted - elevation).toBeLessThan(0.6);
      }),
      { seed: 93 },
    );
  });
  it('Saemundsson, Sky and Telescope 72, 70, 1986 (from memory), in arc minutes: the lift of a sun that stands h degrees high', () => {
    const lift = (h: number) => 1.02 / Math.tan(((h + 10.3 / (h + 5.11)) * Math.PI) / 180);
    const morning = Float64Array.from({ length: 48 }, (_, i) => Date.UTC(2027, 5, 21, 5, 5) + (i * hour) / 6);
    const { elevation, refracted } = sunPositions(morning, 41.1, -8.6);
    const up = Array.from(elevation.keys()).filter((i) => (elevation[i] ?? -1) >= 0);
    expect(elevation[up[0] ?? -1]).toBeLessThan(3);
    expect(up.length).toBeGreaterThan(40);
    for (const i of up) {
      const [h, seen] = [elevation[i] as number, refracted[i] as number];
      expect(Math.abs(60 * (seen - h) - lift(h)), `${h} degrees`).toBeLessThan(0.1);
    }
  });
  it('at the equinox at noon on the prime meridian it stands as high as the latitude leaves', () => {
    // equinox of 20 March 2027, 20:25 UTC: the declination at noon is -0.14 degrees
    for (const lat of [60, 20, -45]) {
      const highest = Math.max(
        ...sunPositions(
          Float64Array.from({ length: 1440 }, (_, i) => Date.UTC(2027, 2, 20) + (i * day) / 1440),
          lat,
          0,
        ).elevation,
      );
      expect(Math.abs(highest - (90 - Math.abs(lat)))).toBeLessThan(0.2);
    }
  });
  it('a missing instant has no sun', () => expect(sunPosition(Number.NaN, 40, 0).azimuth).toBeNaN());
});

describe('angleToSun', () => {
  it('into it, beside it, behind it', () => {
    expect(angleToSun({ azimuth: 120, elevation: 20 }, 120, 20)).toBe(0);
    expect(angleToSun({ azimuth: 180, elevation: 30 }, 180, 0)).toBeCloseTo(30, 12);
    expect(angleToSun({ azimuth: 10, elevation: 0 }, 350, 0)).toBeCloseTo(20, 12);
    expect(angleToSun({ azimuth: 300, elevation: -20 }, 120, 20)).toBeCloseTo(180, 5);
  });
  it('a quarter turn apart and both as high: the cosine is the square of the sine of the height', () => {
    expect(angleToSun({ azimuth: 90, elevation: 30 }, 0, 30)).toBeCloseTo((Math.acos(0.25) * 180) / Math.PI, 10);
    expect(angleToSun({ azimuth: 90, elevation: 60 }, 180, 60)).toBeCloseTo((Math.acos(0.75) * 180) / Math.PI, 10);
  });
  it('law: never less than the difference of the heights', () => {
    const elevation = fc.double({ min: -90, max: 90, noNaN: true });
    fc.assert(
      fc.property(longitude, elevation, longitude, elevation, (azimuth, up, bearing, tilt) => {
        expect(angleToSun({ azimuth, elevation: up }, bearing, tilt)).toBeGreaterThanOrEqual(
          Math.abs(up - tilt) - 1e-9,
        );
      }),
      { seed: 94 },
    );
  });
});
