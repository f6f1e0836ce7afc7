import { UsageError } from '../../columns/index.js';
import type { Beam } from '../../site/index.js';
import { everyUnit, type ThresholdInUnits } from './everyUnit.js';

/** A table for the wall: what each threshold means at each separation. */
export interface WallTable {
  /** Obscuration of the whole path [%], the columns. */
  readonly thresholds: readonly number[];
  /** A row a separation. */
  readonly rows: readonly {
    /** Distance between the two ends [m]. */
    readonly separation: number;
    /** One a threshold. */
    readonly cells: readonly ThresholdInUnits[];
  }[];
}

/** Separations from 20 to 100 m, those of the trade's usual beams. */
export const usualSeparations: readonly number[] = [20, 30, 40, 50, 60, 70, 80, 90, 100];

/** Thresholds of the trade, and the alarm threshold of a beam among them [%]. */
export const usualThresholds = (own: number): number[] => [...new Set([25, 35, 50, own])].sort((a, b) => a - b);

/**
 * What thresholds mean at separations: the same percentage is less and less smoke a metre as the beam grows longer.
 *
 * @param beam layout and wavelength
 * @param thresholds obscuration of the whole path [%]
 * @param separations distances between the ends [m]
 * @throws UsageError for an empty list, or what is no obscuration or length
 */
export function wallTable(
  beam: Pick<Beam, 'layout' | 'wavelength'>,
  thresholds: readonly number[],
  separations: readonly number[] = usualSeparations,
): WallTable {
  if (thresholds.length === 0 || separations.length === 0)
    throw new UsageError('the table of thresholds needs at least one threshold and one separation');
  return {
    thresholds,
    rows: separations.map((separation) => ({
      separation,
      cells: thresholds.map((threshold) => everyUnit(threshold, { ...beam, separation })),
    })),
  };
}
