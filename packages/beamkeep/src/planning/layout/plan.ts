import type { OwnFigures } from '../rules/ownFigures.js';
import type { FigureName, RuleFigure, RuleSet } from '../rules/ruleSet.js';
import type { PlannedHall } from './hall.js';

/*
 * A plan: what is asked, and what comes out. Coordinates: x along the length, y across the width, z above the floor, all
 * from one corner.
 */

/** What is asked. */
export interface PlanQuestion {
  readonly hall: PlannedHall;
  readonly rules: RuleSet;
  /** Figures in place of the rule set's. */
  readonly own?: OwnFigures;
  /** How far below the ceiling [m]; left out: the middle of what the rules allow. */
  readonly belowCeiling?: number;
  /** Heights of lower rows above the floor [m]; left out: those that the rules ask for. */
  readonly lowerRows?: readonly number[];
  /** Air that is warmer above, and the fire for which the smoke must still arrive. */
  readonly air?: WarmAir;
}

/** How warm the air is under the roof, and the fire that shall be seen all the same. */
export interface WarmAir {
  /** [K/m], 0 or more */
  readonly gradient?: number;
  /** How much warmer the air right under the roof is than at the floor [K], 0 or more. */
  readonly roofRise?: number;
  /** Convective heat of the fire [kW], more than 0. */
  readonly convectiveHeat: number;
}

/** A point of the hall: along, across, above the floor [m]. */
export type Point = readonly [x: number, y: number, z: number];

/** A row of beams. */
export interface PlannedRow {
  readonly id: string;
  readonly level: 'roof' | 'lower';
  /** From the left wall [m]. */
  readonly across: number;
  /** What it covers, from the left wall [m]. */
  readonly covers: readonly [from: number, to: number];
  /** Above the floor [m]. */
  readonly height: number;
  /** Below the roof above it [m]. */
  readonly belowCeiling: number;
}

/** One beam. */
export interface PlannedBeam {
  readonly id: string;
  readonly row: string;
  readonly from: Point;
  readonly to: Point;
  /** [m] */
  readonly separation: number;
}

/** Something a reader must know, with the place that says so. */
export interface Warning {
  readonly words: string;
  readonly clause?: string;
}

/** A figure of the rule set with its name and meaning. */
export interface UsedFigure extends RuleFigure {
  readonly name: FigureName;
  readonly meaning: string;
}

/** A plan, as `beamkeep plan --json` prints it, but for the drawings. */
export interface Plan {
  readonly format: 'beamkeep-plan/1';
  readonly hall: PlannedHall;
  readonly ruleSet: Omit<RuleSet, 'figures'> & { readonly figures: readonly UsedFigure[] };
  readonly rows: readonly PlannedRow[];
  readonly beams: readonly PlannedBeam[];
  /** Greatest distance between neighbouring rows at the roof [m]; 0 of a single row. */
  readonly betweenRows: number;
  /** Distance of the outermost rows from the side walls [m]. */
  readonly toSide: number;
  /** Greatest distance of any point of the floor from the nearest row at the roof, across [m]. */
  readonly farthest: number;
  /** What must stay clear around every beam [m]; null where the rule set names nothing. */
  readonly clearRadius: number | null;
  readonly warnings: readonly Warning[];
  readonly leftOut: readonly string[];
  readonly decides: string;
}
