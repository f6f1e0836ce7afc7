/** A number and the limits within which it lies at the confidence asked for; NaN for a value that cannot be told. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
