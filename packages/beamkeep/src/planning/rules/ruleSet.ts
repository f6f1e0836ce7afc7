import type { Sourced } from '../../numbers/index.js';

/*
 * A rule set is data: figures by name, each with its clause, its edition and whether it was read or remembered. The
 * plan knows the names, not the rule sets. To add a rule set: its figures in `numbers/layout.ts`, a record in
 * `ruleSets.ts`. To replace a figure: `withOwnFigures`.
 */

/** Every figure that a rule set may name, with its meaning. All in metres but where said. */
export const figureMeanings = {
  betweenBeams: 'greatest distance between two beams side by side',
  toSide: 'greatest distance from a beam to a side wall',
  toSideLeast: 'least distance from a beam to a side wall',
  separation: 'greatest distance between the two ends of a beam',
  belowCeilingLeast: 'least distance of a beam below the ceiling',
  belowCeilingMost: 'greatest distance of a beam below the ceiling',
  beamHeightMost: 'greatest height of a beam above the floor',
  ceilingMost: 'greatest height of a ceiling, in general',
  ceilingMostSensitive: 'greatest height of a ceiling for a sensitive beam or a quick fire service',
  hallHeightLeast: 'height of a hall from which the rules speak of beams',
  clearRadius: 'distance to be kept clear around a beam, except at its ends',
  aboveWalkway: 'least height of a beam above a floor where people pass',
  apexWidening: 'how much farther a beam in an apex reaches for each degree of slope [%/degree]',
  apexWideningMost: 'how much farther it reaches at most [%]',
  lowerRowsAbove: 'height of a hall from which a lower row is asked for',
  lowerRow: 'height of that row above the floor',
  secondLowerRowAbove: 'height of a hall from which a second lower row is asked for',
  secondLowerRow: 'height of that row above the floor',
  lowerRowReach: 'how far an extra low beam reaches to either side [% of its height]',
} as const;

/** One of `figureNames`. */
export type FigureName = keyof typeof figureMeanings;

/** Names of the figures, in the order of reports. */
export const figureNames = Object.keys(figureMeanings) as readonly FigureName[];

/** One figure of a rule set. */
export interface RuleFigure {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly clause?: string;
  readonly edition?: string;
  /** `given`: the user's own. */
  readonly seen: Sourced['seen'] | 'given';
  readonly note?: string;
}

/** Rules by which beams are laid out. */
export interface RuleSet {
  /** Word by which it is chosen. */
  readonly id: string;
  readonly title: string;
  readonly country: string;
  readonly edition: string;
  /** What has replaced the edition, as far as is known; left out where nothing is known to. */
  readonly superseded?: string;
  readonly figures: Partial<Readonly<Record<FigureName, RuleFigure>>>;
}

/** A figure as a person reads its place: "BS 5839-1:2017, clause 22 (from memory)". */
export function placeOf({ source, clause, seen }: RuleFigure): string {
  const where = clause === undefined || source.includes(clause) ? source : `${source}, ${clause}`;
  return `${where} (${seen})`;
}
