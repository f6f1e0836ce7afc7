import type { StandardLimit } from './standardLimits.js';

/** Nuisance of a grid of settings, as the response room counts it. */
export interface NuisanceGrid {
  /** Time observed [years]. */
  readonly years: number;
  /** Confidence of `low` and `high`. */
  readonly confidence: number;
  readonly cells: readonly (readonly NuisanceCell[])[];
}

/** Nuisance of one setting. */
export interface NuisanceCell {
  readonly count: number;
  /** Alarms a year, and the limits that the count leaves. */
  readonly perYear: number;
  readonly low: number;
  readonly high: number;
}

/** A setting with both its costs; smaller is better. */
export interface Setting {
  /** [%] */
  readonly threshold: number;
  /** [s] */
  readonly delay: number;
  /** Time to alarm of the slowest of the chosen fires [s]; infinite: not while it is watched. */
  readonly seconds: number;
  /** Its band: early and late. */
  readonly early: number;
  readonly late: number;
  /** Nuisance alarms [1/year]. */
  readonly perYear: number;
}

/** A band as JSON has it: null where the fire is not found while it is watched. */
export interface ToldBand {
  readonly value: number | null;
  readonly early: number | null;
  readonly late: number | null;
}

/** What one fire costs. */
export interface FireCost {
  readonly fire: string;
  /** Fuel and where its figures come from. */
  readonly fuel: string;
  readonly cells: readonly (readonly { readonly seconds: ToldBand; readonly heat: ToldBand }[])[];
  readonly current: { readonly seconds: ToldBand; readonly heat: ToldBand };
}

/** Both costs of every setting of one beam, as `beamkeep tradeoff --json` prints them. */
export interface TradeOff {
  readonly beam: string;
  readonly thresholds: readonly number[];
  readonly delays: readonly number[];
  readonly current: { readonly threshold: number; readonly delay: number };
  readonly fires: readonly FireCost[];
  readonly nuisance: NuisanceGrid | null;
  /** Settings that no other one beats in both costs; empty without a log. */
  readonly frontier: readonly Setting[];
  readonly limits: readonly StandardLimit[];
  readonly warnings: readonly string[];
  readonly assumed: readonly string[];
  readonly leftOut: readonly string[];
  readonly decides: string;
}
