import { UsageError } from '../columns/index.js';

/** Refuses a quantity that is not above 0 and finite. */
export function refuseUnlessAbove0(name: string, value: number, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`${name} ${value} ${unit} must be more than 0 and finite`);
  }
}

/** Refuses a quantity that is below 0, endless or missing. */
export function refuseUnlessFrom0(name: string, value: number, unit: string): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`${name} ${value} ${unit} must be 0 or more and finite`);
  }
}

/** Refuses a share that does not lie between 0 and 1 (1 left out). */
export function refuseUnlessShare(name: string, value: number): void {
  if (!(value >= 0 && value < 1)) throw new UsageError(`${name} ${value} must be 0 or more and less than 1`);
}
