import { converted, type Unit, unitNamed } from './attenuation/index.js';
import { UsageError } from './columns/index.js';

/** What is asked: an amount of smoke in one unit, wanted in another. */
export interface ConvertQuestion {
  /** Amount of smoke [`from`], 0 or more; Infinity or `infinite` where no light comes through. */
  readonly value: number | 'infinite';
  /** Name of the unit of `value`. */
  readonly from: string;
  /** Name of the unit wanted. */
  readonly to: string;
  /**
   * Length of smoke that the light crosses [m]: twice the separation of a reflective beam. May be left out where both
   * units speak of the whole path, or both of a metre or foot.
   */
  readonly pathMetres?: number | undefined;
}

/** The question and its answer, as `beamkeep convert --json` prints them. */
export interface Conversion {
  readonly value: number | 'infinite';
  readonly from: Unit;
  readonly to: Unit;
  /** Length of smoke that the light crosses [m]; null where it was left out. */
  readonly path: number | null;
  readonly result: number | 'infinite';
}

const said = (amount: number): number | 'infinite' => (amount === Number.POSITIVE_INFINITY ? 'infinite' : amount);

/**
 * Converts an amount of smoke from one unit of obscuration to another.
 *
 * @returns question and answer; a result without end is the word `infinite`, for JSON has no number for it
 * @throws UsageError for a value that is not a number or not smoke, a unit that does not exist, a path that is missing
 *   where it is needed or not more than 0
 * @example convert({ value: 35, from: 'percent', to: 'decibels-per-metre', pathMetres: 50 }).result // 0.037417
 */
export function convert({ value, from, to, pathMetres }: ConvertQuestion): Conversion {
  const amount = value === 'infinite' ? Number.POSITIVE_INFINITY : value;
  if (typeof amount !== 'number' || Number.isNaN(amount)) {
    throw new UsageError(`value ${String(value)} is not a number: write one such as 35 or 0.02, or "infinite"`);
  }
  const source = unitNamed(from, 'from');
  const target = unitNamed(to, 'to');
  const result = converted(amount, source, target, pathMetres);
  return { value: said(amount), from: source, to: target, path: pathMetres ?? null, result: said(result) };
}
