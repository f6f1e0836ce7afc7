import { UsageError } from '../columns/index.js';

/** Refuses a quantity below 0; NaN passes: a missing sample stays missing. */
export function refuseNegative(name: string, value: number, unit: string): void {
  if (value < 0) throw new UsageError(`${name} ${value}${unit && ` ${unit}`} must be 0 or more`);
}

/** Refuses a length or a scale that is not a number above 0, or has no end. */
export function refuseUnlessPositive(name: string, value: number, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`${name} ${value}${unit && ` ${unit}`} must be more than 0 and finite`);
  }
}

/** Refuses a length below 0, without end, or missing. */
export function refuseUnlessLength(name: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`${name} ${value} m must be 0 or more and finite`);
  }
}
