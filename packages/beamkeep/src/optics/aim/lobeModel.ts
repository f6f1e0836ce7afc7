/*
 * The lobe that is fitted to an aim scan, over one or two axes:
 *
 *     level = floor + peak 2^-(r^power),      r^2 = sum over the axes of ((angle - centre) / half-angle)^2
 *
 * so that above the floor the level halves at r = 1 whatever the power. Half-angle and power are fitted by their
 * logarithms: they cannot turn negative, and their limits are lopsided as they should be.
 */

/** One column of angles an axis. */
export type Angles = readonly Float64Array[];

/** A lobe's numbers. */
export interface Lobe {
  /** Level on the peak, above the floor [unit of the levels]. */
  readonly peak: number;
  /** Level that does not come by the beam [unit of the levels]. */
  readonly floor: number;
  /** One an axis [unit of the angles]. */
  readonly centre: readonly number[];
  /** Turn at which the level above the floor halves, one an axis [unit of the angles]. */
  readonly halfAngle: readonly number[];
  /** 2 for a Gaussian; more for a flatter top and steeper sides. */
  readonly power: number;
}

/** Order of the fitted parameters: peak, floor, centres, logarithms of half-angles and, where free, of the power. */
export function packed({ peak, floor, centre, halfAngle, power }: Lobe, powerFree: boolean): number[] {
  const parameters = [peak, floor, ...centre, ...halfAngle.map(Math.log)];
  return powerFree ? [...parameters, Math.log(power)] : parameters;
}

/** The lobe of fitted parameters. */
export function unpacked(parameters: ArrayLike<number>, axes: number): Lobe {
  const at = (k: number) => parameters[k] as number;
  const each = Array.from({ length: axes }, (_, k) => k);
  return {
    peak: at(0),
    floor: at(1),
    centre: each.map((k) => at(2 + k)),
    halfAngle: each.map((k) => Math.exp(at(2 + axes + k))),
    power: parameters.length > 2 + 2 * axes ? Math.exp(at(2 + 2 * axes)) : 2,
  };
}

/**
 * How far off the peak each row stands.
 *
 * @returns in half-angles, 0 on the peak
 */
export function offPeak({ centre, halfAngle }: Pick<Lobe, 'centre' | 'halfAngle'>, angles: Angles): Float64Array {
  const squares = new Float64Array(angles[0]?.length ?? 0);
  angles.forEach((column, k) => {
    for (let row = 0; row < squares.length; row++) {
      const turn = ((column[row] as number) - (centre[k] as number)) / (halfAngle[k] as number);
      squares[row] = (squares[row] as number) + turn * turn;
    }
  });
  return squares.map(Math.sqrt);
}

/**
 * Level that a lobe gives at each row.
 *
 * @param lobe its numbers
 * @param angles one column an axis
 * @returns [unit of the levels]
 */
export const lobeLevel = (lobe: Lobe, angles: Angles): Float64Array =>
  offPeak(lobe, angles).map((off) => lobe.floor + lobe.peak * 2 ** -(off ** lobe.power));
