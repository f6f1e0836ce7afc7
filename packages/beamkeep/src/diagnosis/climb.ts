/** A growth of loss. */
export interface Climb {
  /** Row at which it begins and row at which it is greatest. */
  readonly from: number;
  readonly to: number;
  /** Growth [dB]. */
  readonly rise: number;
  /** Growth, share of clean air. */
  readonly lost: number;
  /** Time from 10 to 90 % of the growth [ms]. */
  readonly time: number;
  /** Rows from 10 to 90 % of the growth. */
  readonly rows: number;
  /** Row from which less than a third of the growth is left; the number of rows of the log where it never clears. */
  readonly cleared: number;
}
