import {
  layBeams,
  type OwnFigures,
  type Plan,
  planView,
  type Roof,
  ruleSetNamed,
  sectionView,
  type WarmAir,
} from './planning/index.js';

/** What is asked: a hall and a rule set. */
export interface PlanRequest {
  /** Inside measures [m]; beams run along the length. `height` is that of a flat ceiling, or of the eaves. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Flat where left out; the ridge of a pitched roof runs along the length, in the middle. */
  readonly roof?: Roof;
  /** Word of the rule set: `bs5839-1`, `nfpa72`, `gb50116`, `tariff-advisory`, `sp484` or `own`. */
  readonly ruleSet: string;
  /** Figures in place of the rule set's: the local code and the maker's instructions go before it. */
  readonly overrides?: OwnFigures;
  /** How far below the ceiling [m]; left out: the middle of what the rules allow. */
  readonly belowCeiling?: number;
  /** Heights of lower rows above the floor [m]; left out: those that the rules ask for. */
  readonly lowerRows?: readonly number[];
  /** Air that is warmer above, and the fire that shall be seen all the same. */
  readonly air?: WarmAir;
}

/** A plan with its two drawings as SVG. */
export interface PlanAnswer {
  readonly plan: Plan;
  readonly drawings: { readonly plan: string; readonly section: string };
}

/**
 * How many beams, where, how high: a layout by a rule set, with its warnings and its drawings.
 *
 * @throws UsageError for a hall that cannot be, a rule set that is not known or names no distance between beams
 * @example plan({ length: 62, width: 40, height: 12, ruleSet: 'bs5839-1' }).plan.beams.length // 3
 */
export function plan({
  length,
  width,
  height,
  roof = { shape: 'flat' },
  ruleSet,
  overrides = {},
  ...rest
}: PlanRequest): PlanAnswer {
  const laid = layBeams({
    hall: { length, width, height, roof },
    rules: ruleSetNamed(ruleSet),
    own: overrides,
    ...rest,
  });
  return { plan: laid, drawings: { plan: planView(laid), section: sectionView(laid) } };
}
