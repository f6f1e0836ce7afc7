import { UsageError } from '../../columns/index.js';
import { placedBelowCeiling } from '../../numbers/index.js';
import { whoDecides } from '../../smoke/index.js';
import { withOwnFigures } from '../rules/ownFigures.js';
import { type FigureName, figureMeanings, figureNames, type RuleFigure, type RuleSet } from '../rules/ruleSet.js';
import { checkHall, type PlannedHall, roofAt, topOf } from './hall.js';
import type { Plan, PlannedBeam, PlannedRow, PlanQuestion, UsedFigure } from './plan.js';
import { planWarnings } from './planWarnings.js';
import { evenly, type RowAcross, type RowDistances, rowsAcross, rowsFor } from './rowsAcross.js';

/*
 * Where beams go. One row of beams stands for one line from end wall to end wall; a hall longer than a beam may be gets
 * several beams in a row.
 */

/** What a plan leaves out. */
const leftOut: readonly string[] = [
  'Beams, joists, ducts, cranes, racks and lamps in the way, and roofs of other shapes.',
  'Whether the structure moves more than the aim allows: see the range budget and the aim scan.',
  'Sun and lamps on the receiver, reflecting walls, and what the maker demands of each end.',
  'Other detectors, escape routes and everything else that a fire alarm design needs.',
];

/**
 * A layout of beams by a rule set.
 *
 * @param question hall, rules, and what differs from them
 * @returns rows, beams, distances, warnings with their clauses
 * @throws UsageError for a hall that cannot be, a rule set without a distance between beams, a height outside the hall
 *
 * The local code, the authority and the maker's instructions decide; every figure used says where it comes from.
 */
export function layBeams(question: PlanQuestion): Plan {
  const { hall, own = {} } = question;
  checkHall(hall);
  const rules = withOwnFigures(question.rules, own);
  const figure = (name: FigureName): RuleFigure | undefined => rules.figures[name];
  const distances = distancesOf(rules);
  const below = belowCeilingOf(question, rules);
  const roofRows = rowsAcross(hall, distances).map((row) => ({ ...row, height: roofAt(hall, row.across) - below }));
  const lower = lowerRowsOf(question, rules, distances, roofRows.length);
  const rows = [
    ...named(roofRows, 'roof', hall, 'R'),
    ...lower.flatMap(({ height, across }, i) =>
      named(
        across.map((row) => ({ ...row, height })),
        'lower',
        hall,
        `L${lower.length > 1 ? i + 1 : ''}-`,
      ),
    ),
  ];
  checkHeights(rows, hall);
  const beams = rows.flatMap((row) => beamsOf(row, hall, figure('separation')?.value ?? Number.POSITIVE_INFINITY));
  const at = roofRows.map(({ across }) => across);
  const toSide = Math.max(at[0] ?? 0, hall.width - (at.at(-1) ?? 0));
  const betweenRows = Math.max(0, ...at.slice(1).map((across, i) => across - (at[i] as number)));
  return {
    format: 'beamkeep-plan/1',
    hall,
    ruleSet: { ...rules, figures: usedFigures(rules) },
    rows,
    beams,
    betweenRows,
    toSide,
    farthest: Math.max(toSide, betweenRows / 2),
    clearRadius: figure('clearRadius')?.value ?? null,
    warnings: planWarnings(rows, beams, rules, question),
    leftOut,
    decides: whoDecides,
  };
}

function distancesOf({ id, figures }: RuleSet): RowDistances {
  const betweenBeams = figures.betweenBeams?.value;
  if (betweenBeams === undefined || betweenBeams === 0) {
    throw new UsageError(`rule set ${id} names no distance between beams: give betweenBeams, in metres`);
  }
  const toSide = figures.toSide?.value ?? betweenBeams / 2;
  if (toSide === 0) throw new UsageError('figure toSide is 0 m: no beam can cover anything, give more');
  return {
    betweenBeams,
    toSide,
    apexWidening: figures.apexWidening?.value ?? 0,
    apexWideningMost: figures.apexWideningMost?.value ?? Number.POSITIVE_INFINITY,
  };
}

function belowCeilingOf({ belowCeiling }: PlanQuestion, { figures }: RuleSet): number {
  if (belowCeiling !== undefined) {
    if (!(belowCeiling >= 0)) throw new UsageError(`belowCeiling ${belowCeiling} m must be 0 or more`);
    return belowCeiling;
  }
  const { belowCeilingLeast: least, belowCeilingMost: most } = figures;
  if (least === undefined && most === undefined) return placedBelowCeiling.value;
  const from = least?.value ?? 0;
  return (from + (most?.value ?? from)) / 2;
}

interface LowerRows {
  readonly height: number;
  readonly across: readonly RowAcross[];
}

/**
 * Lower rows: at the user's heights, else at those that the rules ask for. Every other level has one row more, so that
 * no row stands right below another.
 */
function lowerRowsOf(
  { hall, lowerRows }: PlanQuestion,
  { figures }: RuleSet,
  distances: RowDistances,
  roofRows: number,
): LowerRows[] {
  const top = topOf(hall);
  const asked = [
    [figures.secondLowerRowAbove, figures.secondLowerRow],
    [figures.lowerRowsAbove, figures.lowerRow],
  ].flatMap(([above, at]) => (above && at && top > above.value ? [at.value] : []));
  const heights = [...(lowerRows ?? asked)].sort((a, b) => b - a);
  return heights.map((height, i) => {
    const reach = ((figures.lowerRowReach?.value ?? 0) / 100) * height;
    const plumes = reach > 0 ? rowsFor(hall.width, { betweenBeams: 2 * reach, toSide: reach }) : 1;
    const least = Math.max(plumes, rowsFor(hall.width, distances), roofRows);
    return { height, across: evenly(0, hall.width, i % 2 === 0 ? least + 1 : least) };
  });
}

const named = (
  rows: readonly (RowAcross & { readonly height: number })[],
  level: PlannedRow['level'],
  hall: PlannedHall,
  prefix: string,
): PlannedRow[] =>
  rows.map(({ across, covers, height }, i) => ({
    id: `${prefix}${i + 1}`,
    level,
    across,
    covers,
    height,
    belowCeiling: roofAt(hall, across) - height,
  }));

function checkHeights(rows: readonly PlannedRow[], hall: PlannedHall): void {
  for (const { id, height, across } of rows) {
    if (!(height > 0 && height <= roofAt(hall, across))) {
      throw new UsageError(
        `row ${id} would be ${height} m above the floor, where the roof is ${roofAt(hall, across)} m high: it must lie between`,
      );
    }
  }
}

function beamsOf({ id, across, height }: PlannedRow, { length }: PlannedHall, most: number): PlannedBeam[] {
  const beams = Math.max(1, Math.ceil(length / most - 1e-9));
  return Array.from({ length: beams }, (_, i) => ({
    id: beams === 1 ? id : `${id}.${i + 1}`,
    row: id,
    from: [(i * length) / beams, across, height],
    to: [((i + 1) * length) / beams, across, height],
    separation: length / beams,
  }));
}

const usedFigures = ({ figures }: RuleSet): UsedFigure[] =>
  figureNames.flatMap((name) => {
    const found = figures[name];
    return found === undefined ? [] : [{ name, meaning: figureMeanings[name], ...found }];
  });
