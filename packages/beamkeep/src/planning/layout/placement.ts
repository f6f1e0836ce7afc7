import type { RuleSet } from '../rules/ruleSet.js';
import { placeOf } from '../rules/ruleSet.js';

/** A beam as it was built [m]; what is left out is not checked. */
export interface Placement {
  readonly belowCeiling?: number;
  readonly aboveFloor?: number;
  readonly betweenBeams?: number;
  readonly toSide?: number;
  readonly separation?: number;
}

/** A rule that a placement breaks. */
export interface Breach {
  readonly what: keyof Placement;
  readonly found: number;
  readonly limit: number;
  readonly clause: string;
}

const limits = [
  ['belowCeiling', 'belowCeilingLeast', 'least'],
  ['belowCeiling', 'belowCeilingMost', 'most'],
  ['aboveFloor', 'beamHeightMost', 'most'],
  ['aboveFloor', 'aboveWalkway', 'least'],
  ['betweenBeams', 'betweenBeams', 'most'],
  ['toSide', 'toSideLeast', 'least'],
  ['toSide', 'toSide', 'most'],
  ['separation', 'separation', 'most'],
] as const;

/**
 * Where beams that stand already break a rule set.
 *
 * @returns one breach a broken limit, in the order of the limits; empty where every figure that is given is kept
 * @example breaches({ toSide: 0.3 }, ruleSetNamed('gb50116'))[0]?.limit // 0.5
 */
export function breaches(placement: Placement, { figures }: RuleSet): Breach[] {
  return limits.flatMap(([what, name, side]) => {
    const found = placement[what];
    const figure = figures[name];
    if (found === undefined || figure === undefined) return [];
    const broken = side === 'least' ? found < figure.value : found > figure.value;
    return broken ? [{ what, found, limit: figure.value, clause: placeOf(figure) }] : [];
  });
}
