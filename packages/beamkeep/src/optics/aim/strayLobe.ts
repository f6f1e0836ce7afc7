import {
  nonlinearFit,
  type RobustNonlinearFit,
  type RobustNonlinearOptions,
  robustNonlinearFit,
} from '../../statistics/index.js';
import { type Angles, type Lobe, lobeLevel, offPeak, packed, unpacked } from './lobeModel.js';

/*
 * A stray reflection is a second, weaker lobe beside the beam's own. Fitted together with it, it neither hides in a wider
 * main lobe nor pulls the centre towards itself. Its width is told by its ratio to the main lobe's, on every axis alike.
 */

/** A weaker lobe beside the beam's own. */
export interface StrayLobe {
  /** Over the peak of the main lobe. */
  readonly share: number;
  /** Where its middle lies, one an axis [unit of the angles]. */
  readonly at: readonly number[];
  /** Whether it makes a peak of its own, or only lifts the flank. */
  readonly ownPeak: boolean;
}

/** A fit of two lobes: the main one's parameters first, then the stray one's. */
export interface StrayFit {
  readonly fit: RobustNonlinearFit;
  readonly stray: StrayLobe;
}

/** A stray lobe nearer to the peak cannot be told from the main one's shape [half-angles of the main lobe]. */
const nearest = 0.6;
/** Least height that matters, over the main peak; and least certainty, in standard errors. */
const leastShare = 0.02;
const leastCertainty = 4;
/** Widths between which a lobe may be, over the main one's: less is a spike, more is a floor. Own choice, all four. */
const widths = [0.15, 3] as const;

/**
 * The best fit with a stray lobe beside the main one; undefined where none stands up.
 *
 * @param main fit of the main lobe alone, a Gaussian
 * @param angles one column an axis
 * @param level one a row
 */
export function withStrayLobe(
  main: RobustNonlinearFit,
  angles: Angles,
  level: Float64Array,
  options: RobustNonlinearOptions & { readonly typical: readonly number[] },
): StrayFit | undefined {
  const axes = angles.length;
  const own = 2 + 2 * axes;
  const predict = (parameters: Float64Array) => {
    const lobe = unpacked(parameters.subarray(0, own), axes);
    const stray = lobeLevel(strayOf(parameters, lobe, axes), angles);
    return lobeLevel(lobe, angles).map((value, row) => value + (stray[row] as number));
  };
  const lobe = unpacked(main.parameters, axes);
  // A scan without a peak may be fitted by a lobe without a width, or without an end: nothing stands beside it.
  if (!packed(lobe, false).every(Number.isFinite)) return undefined;
  const typical = [...options.typical, lobe.peak, ...lobe.halfAngle, 1];
  const looks = places(lobe, main.residuals, angles).map((centre) => {
    const start = [...packed(lobe, false), 0.2 * lobe.peak, ...centre, Math.log(0.5)];
    return nonlinearFit(predict, level, start, { ...options, typical, mostSteps: 20 });
  });
  const [best] = looks
    .filter(({ parameters }) => sound(parameters, axes))
    .sort((a, b) => a.residualSquares - b.residualSquares);
  if (best === undefined) return undefined;
  const fit = robustNonlinearFit(predict, level, [...best.parameters], { ...options, typical });
  const error = Math.sqrt(fit.covariance[own]?.[own] as number);
  if (!sound(fit.parameters, axes) || !((fit.parameters[own] as number) > leastCertainty * error)) return undefined;
  const found = unpacked(fit.parameters.subarray(0, own), axes);
  const stray = strayOf(fit.parameters, found, axes);
  const share = stray.peak / found.peak;
  return { fit, stray: { share, at: stray.centre, ownPeak: hasOwnPeak(found, stray) } };
}

/** The stray lobe of fitted parameters, without a floor of its own. */
function strayOf(parameters: Float64Array, main: Lobe, axes: number): Lobe {
  const from = 2 + 2 * axes;
  const ratio = Math.exp(parameters[from + 1 + axes] as number);
  return {
    peak: parameters[from] as number,
    floor: 0,
    centre: Array.from({ length: axes }, (_, k) => parameters[from + 1 + k] as number),
    halfAngle: main.halfAngle.map((angle) => angle * ratio),
    power: 2,
  };
}

/** Whether the two lobes are what they are taken for: a strong one, and a weaker one well beside it. */
function sound(parameters: Float64Array, axes: number): boolean {
  const main = unpacked(parameters.subarray(0, 2 + 2 * axes), axes);
  const stray = strayOf(parameters, main, axes);
  const ratio = (stray.halfAngle[0] as number) / (main.halfAngle[0] as number);
  const apart = Math.hypot(
    ...stray.centre.map((at, k) => (at - (main.centre[k] as number)) / (main.halfAngle[k] as number)),
  );
  const share = stray.peak / main.peak;
  return share > leastShare && share < 1 && apart > nearest && ratio > widths[0] && ratio < widths[1];
}

/** Half-angles off the peak at which a stray lobe is looked for. Own choice: where it lies, the fit tells. */
const looked = 1.5;

/** Where to look for a stray lobe: at the greatest excess off the peak, and around the peak on every side. */
function places(lobe: Lobe, residuals: Float64Array, angles: Angles): number[][] {
  const off = offPeak(lobe, angles);
  const highest = Array.from(off.keys())
    .filter((row) => (off[row] as number) > nearest)
    .sort((a, b) => (residuals[b] as number) - (residuals[a] as number))
    .slice(0, 1)
    .map((row) => angles.map((column) => column[row] as number));
  const around = [-looked, looked].flatMap((turn) =>
    angles.map((_, k) => lobe.centre.map((at, j) => (j === k ? at + turn * (lobe.halfAngle[k] as number) : at))),
  );
  return [...highest, ...around];
}

/** Whether the sum of both lobes dips on the way from the main peak to the stray one. */
function hasOwnPeak(main: Lobe, stray: Lobe): boolean {
  const steps = 100;
  const way = main.centre.map((from, k) =>
    Float64Array.from({ length: steps + 1 }, (_, i) => from + ((stray.centre[k] as number) - from) * (i / steps)),
  );
  const second = lobeLevel(stray, way);
  const sum = lobeLevel(main, way).map((value, i) => value + (second[i] as number));
  const end = sum[steps] as number;
  return sum.some((value) => value < end - 0.002 * main.peak);
}
