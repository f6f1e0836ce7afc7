import { UsageError } from '../../columns/index.js';
import { type RobustNonlinearFit, robustNonlinearFit, studentQuantile } from '../../statistics/index.js';
import type { Estimate } from '../estimate.js';
import { type Angles, type Lobe, lobeLevel, offPeak, packed, unpacked } from './lobeModel.js';
import { type ScanFlag, scanFlags } from './scanFlags.js';
import { startingLobes } from './startingLobes.js';
import { type StrayLobe, withStrayLobe } from './strayLobe.js';

/** One axis of a fitted lobe. */
export interface LobeAxis {
  /** Where the peak lies [unit of the angles]. */
  readonly centre: Estimate;
  /** Turn of the head at which the received level above the floor halves [unit of the angles]. */
  readonly halfAngle: Estimate;
}

/** A lobe fitted to an aim scan. */
export interface LobeFit {
  /** `super-gaussian` only where the data ask for it: flatter or sharper than a Gaussian by the information criterion. */
  readonly shape: 'gaussian' | 'super-gaussian';
  /** Level on the peak above the floor [unit of the levels]. */
  readonly peak: Estimate;
  /** Level far off the peak [unit of the levels]. */
  readonly floor: Estimate;
  /** 2 for a Gaussian, then without limits to either side. */
  readonly power: Estimate;
  /** One an axis. */
  readonly axes: readonly LobeAxis[];
  /** The fitted lobe as plain numbers, for `lobeLevel`. */
  readonly lobe: Lobe;
  /** Covariance of peak, floor, centres, logarithms of half-angles and, where free, of the power. */
  readonly covariance: readonly Float64Array[];
  /** Spread of the readings about the lobe, the wild ones left out [unit of the levels]. */
  readonly residualSpread: number;
  /** Readings that took part. */
  readonly n: number;
  /** Information criterion of the Gaussian less that of the super-Gaussian: positive where the latter tells more. */
  readonly informationGain: number;
  /** Whether the fit came to rest. */
  readonly converged: boolean;
  /** Confidence of all limits. */
  readonly confidence: number;
  /** A weaker lobe beside the beam's own, fitted with it; left out where there is none. */
  readonly stray?: StrayLobe;
  /** Doubts about the scan. */
  readonly flags: readonly ScanFlag[];
}

/** How a lobe is fitted. */
export interface LobeOptions {
  /** Level with the far end covered [unit of the levels]; 0 when left out. */
  readonly covered?: number;
  /** Smallest step that the readings can show [unit of the levels]; 0 when left out. */
  readonly quantum?: number;
  /** Of all limits, 0 to 1; 0.95 when left out. */
  readonly confidence?: number;
}

/** What the super-Gaussian must gain, so that chance does not choose it [information criterion]; and a stray lobe. Own choice. */
const leastGain = 6;
const leastStrayGain = 10;
/** Readings on the flat top of a receiver that is saturated. Own choice. */
const clippedReadings = 3;

/**
 * The lobe in an aim scan over one axis.
 *
 * @param angles turn of the head at each reading [degrees, or any unit], in any order; NaN where missing
 * @param levels received at each, proportional to optical power [any unit]; NaN where missing
 * @throws UsageError for fewer readings than the lobe has numbers
 *
 * Robust: wild readings and a stray reflection over up to a third of the scan do not bend the lobe, but are flagged.
 * Limits take the readings as independent. A stray reflection that is nearer to the peak than about one and a half
 * half-angles, or more than three times as wide as the lobe, may melt into it: the centre then lies between the two, and
 * where the readings scatter no flag need say so. Only a scan with the reflector covered shows such light.
 * Sources: Gaussian lobe, see `lobeLoss`; Hurvich and Tsai, Biometrika 76, 297-307, 1989, for the criterion (from memory).
 * @example fitLobe(degrees, counts).axes[0]?.centre // { value: 0.12, low: 0.10, high: 0.14 }
 */
export const fitLobe = (angles: Float64Array, levels: Float64Array, options: LobeOptions = {}): LobeFit =>
  fitted([angles], levels, options);

/**
 * The lobe in an aim scan over two axes: a raster, a cross, or any set of places.
 *
 * @param first turn about one axis at each reading [degrees, or any unit]
 * @param second turn about the other [same unit]
 * @param levels received at each, proportional to optical power [any unit]; NaN where missing
 * @throws UsageError for fewer readings than the lobe has numbers
 *
 * The lobe's own axes are taken to be those of the scan. Else as `fitLobe`.
 * @example fitLobeTwoAxes(pan, tilt, counts).axes.map(({ centre }) => centre.value) // [0.12, -0.3]
 */
export const fitLobeTwoAxes = (
  first: Float64Array,
  second: Float64Array,
  levels: Float64Array,
  options: LobeOptions = {},
): LobeFit => fitted([first, second], levels, options);

function fitted(columns: Angles, levels: Float64Array, options: LobeOptions): LobeFit {
  const { covered = 0, quantum = 0, confidence = 0.95 } = options;
  if (columns.some((column) => column.length !== levels.length)) {
    throw new UsageError(`fitLobe: angles and levels (${levels.length}) must be as many`);
  }
  const rows = Array.from(levels.keys()).filter(
    (row) => Number.isFinite(levels[row]) && columns.every((column) => Number.isFinite(column[row])),
  );
  const axes = columns.length;
  const least = 2 + 2 * axes;
  if (rows.length <= least) {
    throw new UsageError(
      `fitLobe: ${rows.length} readings; a lobe over ${axes} axis needs more than ${least}: scan finer`,
    );
  }
  const whole = scanOf(columns, levels, rows);
  const leastSpread = quantum / Math.sqrt(12);

  const first = bestFit(whole, leastSpread);
  const cut = cutLevel(whole, quantum, leastSpread, first);
  const scan = cut === undefined ? whole : below(cut - quantum / 2, whole);
  const gaussian = cut === undefined ? first : bestFit(scan, leastSpread);
  const { angles, level } = scan;
  const start = unpacked(gaussian.parameters, axes);
  const free = robustNonlinearFit(prediction(angles), level, packed(start, true), fitOptions(start, true, leastSpread));
  const two = withStrayLobe(gaussian, angles, level, fitOptions(start, false, leastSpread));
  const spread = Math.min(gaussian.residualSpread, free.residualSpread, two?.fit.residualSpread ?? Infinity);
  const plain = criterion(gaussian, spread);
  const gain = (other: RobustNonlinearFit | undefined) => {
    const cost = other?.converged ? criterion(other, spread) : Number.POSITIVE_INFINITY;
    return cost === Number.POSITIVE_INFINITY ? -cost : plain - cost; // too few readings: both would be endless
  };
  const informationGain = gain(free);
  const stray = gain(two?.fit) > Math.max(leastStrayGain, informationGain) ? two?.stray : undefined;
  const asked = stray === undefined && informationGain > leastGain;
  const fit = stray !== undefined && two ? two.fit : asked ? free : gaussian;
  const numbers = asked ? least + 1 : least;
  const lobe = unpacked(fit.parameters.subarray(0, numbers), axes);

  const reach = studentQuantile((1 + confidence) / 2, Math.max(fit.n - fit.parameters.length, 1));
  const error = (k: number) => Math.sqrt(fit.covariance[k]?.[k] as number);
  const around = (k: number): Estimate => {
    const value = fit.parameters[k] as number;
    return { value, low: value - reach * error(k), high: value + reach * error(k) };
  };
  const logarithmic = (k: number): Estimate => {
    const { value, low, high } = around(k);
    return { value: Math.exp(value), low: Math.exp(low), high: Math.exp(high) };
  };
  const each = angles.map((_, k) => k);
  const centreError = each.map((k) => error(2 + k) / (lobe.halfAngle[k] as number));
  return {
    shape: asked ? 'super-gaussian' : 'gaussian',
    peak: around(0),
    floor: around(1),
    power: asked ? logarithmic(least) : { value: 2, low: 2, high: 2 },
    axes: each.map((k) => ({ centre: around(2 + k), halfAngle: logarithmic(2 + axes + k) })),
    lobe,
    covariance: fit.covariance.slice(0, numbers).map((row) => row.slice(0, numbers)),
    ...(stray ? { stray } : {}),
    residualSpread: fit.residualSpread,
    n: fit.n,
    informationGain,
    converged: fit.converged,
    confidence,
    flags: scanFlags({ lobe, fit, angles, level, cut, covered, centreError, floorError: error(1), stray }),
  };
}

/** Readings of a scan, none missing. */
interface Scan {
  readonly angles: Angles;
  readonly level: Float64Array;
}

const scanOf = (columns: Angles, levels: Float64Array, rows: readonly number[]): Scan => ({
  angles: columns.map((column) => Float64Array.from(rows, (row) => column[row] as number)),
  level: Float64Array.from(rows, (row) => levels[row] as number),
});

/** What of a scan was read below a level. */
const below = (cut: number, { angles, level }: Scan): Scan =>
  scanOf(
    angles,
    level,
    Array.from(level.keys()).filter((row) => (level[row] as number) < cut),
  );

/** The best of the Gaussian fits from every start; one that stands above the floor, if any does. */
function bestFit({ angles, level }: Scan, leastSpread: number): RobustNonlinearFit {
  const fits = startingLobes(angles, level).map((start) =>
    robustNonlinearFit(prediction(angles), level, packed(start, false), fitOptions(start, false, leastSpread)),
  );
  const spread = Math.min(...fits.map((fit) => fit.residualSpread));
  const sound = fits.filter((fit) => (fit.parameters[0] as number) > 0);
  return (sound.length > 0 ? sound : fits).reduce((best, fit) =>
    distrust(fit, spread) < distrust(best, spread) ? fit : best,
  );
}

/** Level of the lobe at every row of a scan. */
const prediction = (angles: Angles) => (parameters: Float64Array) =>
  lobeLevel(unpacked(parameters, angles.length), angles);

/** Options of a fit: usual sizes of the parameters. */
const fitOptions = (start: Lobe, powerFree: boolean, leastSpread: number) => ({
  leastSpread,
  typical: packed({ ...start, centre: start.halfAngle, floor: start.peak }, powerFree).map((size) => size || 1),
});

/** Twice the biweight's cost of what a fit leaves, in spreads: the robust stand-in for the sum of squares (`robustLeastSquares`). */
function distrust({ residuals }: RobustNonlinearFit, spread: number): number {
  const reach = 4.685;
  return residuals.reduce((sum, residual) => {
    const share = Math.min((residual / (reach * spread)) ** 2, 1);
    return sum + (reach ** 2 / 3) * (1 - (1 - share) ** 3);
  }, 0);
}

/** Corrected information criterion of a fit, in spreads that all fits compared share; endless for too few readings. */
function criterion(fit: RobustNonlinearFit, spread: number): number {
  const k = fit.parameters.length + 1; // the spread is a number, too
  return distrust(fit, spread) + 2 * k + (2 * k * (k + 1)) / Math.max(fit.n - k - 1, 0);
}

/**
 * Level of a top that is cut off: three or more readings share the very highest level, over more of the lobe than a free
 * top could hold level.
 *
 * @returns undefined where the top is free
 */
function cutLevel(scan: Scan, quantum: number, leastSpread: number, whole: RobustNonlinearFit): number | undefined {
  const { angles, level } = scan;
  const highest = level.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  const top = Array.from(level.keys()).filter((row) => (level[row] as number) >= highest - quantum / 2);
  const rest = below(highest - quantum / 2, scan);
  if (top.length < clippedReadings || rest.level.length <= whole.parameters.length) return undefined;
  const free = bestFit(rest, leastSpread);
  const lobe = unpacked(free.parameters, angles.length);
  const margin = Math.max(3 * free.residualSpread, 2 * quantum, 0.02 * lobe.peak);
  const off = offPeak(lobe, angles);
  const within = top.every((row) => (off[row] as number) < 1);
  return within && lobe.peak + lobe.floor > highest + margin ? highest : undefined;
}
