import { endSlope } from '../numbers/index.js';

/*
 * How far a structure moves, as lengths and as the turn of a head that is fixed to it. A head that turns by an angle
 * moves its spot by that angle times the distance; a reflector that shifts sideways by y is off by y over the distance.
 */

/** An angle in both units of the trade. */
export interface Turn {
  readonly milliradians: number;
  readonly degrees: number;
}

/** A bent member: how far its middle moves and how much its ends turn. */
export interface Bend {
  /** Movement in the middle of the span [mm]. */
  readonly midspanMillimetres: number;
  /** Turn of the ends, where a head may hang [mrad]. */
  readonly endSlopeMilliradians: number;
  /** The same in degrees. */
  readonly endSlopeDegrees: number;
}

const degrees = (radians: number) => (radians * 180) / Math.PI;

/**
 * Angle under which a sideways displacement is seen.
 *
 * @param displacementMillimetres sideways [mm]
 * @param distanceMetres to the other end [m], above 0
 * @example angleOfDisplacement(500, 100).degrees // 0.286
 */
export function angleOfDisplacement(displacementMillimetres: number, distanceMetres: number): Turn {
  const angle = Math.atan(displacementMillimetres / 1000 / distanceMetres);
  return { milliradians: 1000 * angle, degrees: degrees(angle) };
}

/**
 * Sideways displacement at the other end for a turn of the head: the inverse of `angleOfDisplacement`.
 *
 * @param angleDegrees turn of the head [degrees]
 * @param distanceMetres to the other end [m]
 * @returns [mm]
 * @example displacementOfAngle(0.5, 60) // 524
 */
export const displacementOfAngle = (angleDegrees: number, distanceMetres: number): number =>
  1000 * distanceMetres * Math.tan((angleDegrees * Math.PI) / 180);

/**
 * Growth of a member that warms.
 *
 * @param coefficientPerKelvin `thermalExpansion` of numbers holds the usual ones [1/K]
 * @param lengthMetres [m]
 * @param temperatureChangeKelvin [K]
 * @returns [mm]
 * @example thermalGrowth(12e-6, 100, 40) // 48
 */
export const thermalGrowth = (coefficientPerKelvin: number, lengthMetres: number, temperatureChangeKelvin: number) =>
  1000 * coefficientPerKelvin * lengthMetres * temperatureChangeKelvin;

/**
 * Bow of a simple beam that is warmer on one face than on the other.
 *
 * @param coefficientPerKelvin [1/K]
 * @param differenceKelvin top less bottom [K], spread evenly through the depth
 * @param depthMetres of the member [m], above 0
 * @param spanMetres [m]
 *
 * Source: derived; curvature is coefficient times difference over depth.
 * @example thermalBow(12e-6, 10, 0.5, 24).endSlopeMilliradians // 2.88
 */
export function thermalBow(
  coefficientPerKelvin: number,
  differenceKelvin: number,
  depthMetres: number,
  spanMetres: number,
): Bend {
  const curvature = (coefficientPerKelvin * differenceKelvin) / depthMetres;
  return bend((curvature * spanMetres ** 2) / 8, (curvature * spanMetres) / 2);
}

/**
 * A simple beam under a uniform load that bends it to a limit such as span/360.
 *
 * @param spanMetres [m]
 * @param ratio span over deflection, above 0; `deflectionLimits` of numbers holds those of the building code
 *
 * Source: beam theory, end slope 16/5 of deflection over span, derived.
 * @example deflection(30, 360).endSlopeDegrees // 0.509
 */
export const deflection = (spanMetres: number, ratio: number): Bend => bend(spanMetres / ratio, endSlope.value / ratio);

/** Sway of a frame. */
export interface Drift {
  /** Sideways movement of the top [mm]. */
  readonly topMillimetres: number;
  /** Turn of a column, and of a head on it [degrees]. */
  readonly rotationDegrees: number;
}

/**
 * A frame that leans to a limit such as height/60.
 *
 * @param heightMetres [m]
 * @param ratio height over drift, above 0; `frameDrift` of numbers holds the usual range
 *
 * Source: AISC Design Guide 3, 2nd ed., for the ratios; the angle derived.
 * @example drift(10, 60).rotationDegrees // 0.955
 */
export const drift = (heightMetres: number, ratio: number): Drift => ({
  topMillimetres: (1000 * heightMetres) / ratio,
  rotationDegrees: degrees(Math.atan(1 / ratio)),
});

const bend = (midspanMetres: number, slope: number): Bend => ({
  midspanMillimetres: 1000 * midspanMetres,
  endSlopeMilliradians: 1000 * slope,
  endSlopeDegrees: degrees(slope),
});
