import { UsageError } from '../../columns/index.js';
import { leastSeparation, placedBelowCeiling, visiblePlumeWidth } from '../../numbers/index.js';
import { leastFire, riseHeight, whoDecides } from '../../smoke/index.js';
import { type OwnFigures, withOwnFigures } from '../rules/ownFigures.js';
import {
  type FigureName,
  figureMeanings,
  figureNames,
  placeOf,
  type RuleFigure,
  type RuleSet,
} from '../rules/ruleSet.js';
import { checkHall, type PlannedHall, roofAt, topOf } from './hall.js';
import { evenly, type RowAcross, type RowDistances, rowsAcross, rowsFor } from './rowsAcross.js';

/*
 * Where beams go. One row of beams stands for one line from end wall to end wall; a hall longer than a beam may be gets
 * several beams in a row. Coordinates: x along the length, y across the width, z above the floor, all from one corner.
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
  const { hall, own = {}, air } = question;
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
  const warnings = [
    ...warningsOfRules(rules),
    ...warningsOfHall(hall, rules),
    ...warningsOfRows(rows, beams, hall, rules, question),
    ...(air === undefined ? [] : warningsOfAir(air, hall, rows, rules)),
  ];
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
    warnings,
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

const warn = (words: string, figure?: RuleFigure): Warning => ({
  words,
  ...(figure && { clause: placeOf(figure) }),
});

function warningsOfRules(rules: RuleSet): Warning[] {
  const { superseded, figures } = rules;
  const remembered = figureNames.filter((name) => figures[name]?.seen === 'from memory');
  const missing = (['separation', 'belowCeilingMost', 'clearRadius'] as const).filter((name) => !figures[name]);
  return [
    ...(superseded === undefined ? [] : [warn(`Edition ${rules.edition}: ${superseded}.`)]),
    ...(remembered.length === 0
      ? []
      : [
          warn(
            `From memory, to be checked in the standard before anybody relies on it: ${remembered.map((name) => figureMeanings[name]).join('; ')}.`,
          ),
        ]),
    ...(missing.length === 0
      ? []
      : [
          warn(
            `This rule set names no ${missing.map((name) => figureMeanings[name]).join('; no ')}: the maker's instructions do.`,
          ),
        ]),
  ];
}

function warningsOfHall(hall: PlannedHall, { figures }: RuleSet): Warning[] {
  const top = topOf(hall);
  const { ceilingMost, ceilingMostSensitive, hallHeightLeast } = figures;
  const told: Warning[] = [];
  const hard = ceilingMostSensitive ?? ceilingMost;
  if (hard && top > hard.value) {
    told.push(warn(`The roof is ${top} m high; these rules end at ${hard.value} m. Ask the authority.`, hard));
  } else if (ceilingMost && top > ceilingMost.value) {
    told.push(
      warn(
        `The roof is ${top} m high, above ${ceilingMost.value} m: only a beam that responds at 35 % or less, or a quick fire service, may do.`,
        ceilingMostSensitive ?? ceilingMost,
      ),
    );
  }
  if (hallHeightLeast && top < hallHeightLeast.value) {
    told.push(
      warn(
        `The hall is ${top} m high; these rules speak of beams from ${hallHeightLeast.value} m on.`,
        hallHeightLeast,
      ),
    );
  }
  return told;
}

function warningsOfRows(
  rows: readonly PlannedRow[],
  beams: readonly PlannedBeam[],
  hall: PlannedHall,
  { figures }: RuleSet,
  { belowCeiling, lowerRows }: PlanQuestion,
): Warning[] {
  const told: Warning[] = [];
  const { belowCeilingLeast, belowCeilingMost, beamHeightMost, aboveWalkway, toSideLeast, separation } = figures;
  if (belowCeiling !== undefined && belowCeilingLeast && belowCeiling < belowCeilingLeast.value) {
    told.push(
      warn(`${belowCeiling} m below the ceiling is less than ${belowCeilingLeast.value} m.`, belowCeilingLeast),
    );
  }
  if (belowCeiling !== undefined && belowCeilingMost && belowCeiling > belowCeilingMost.value) {
    told.push(warn(`${belowCeiling} m below the ceiling is more than ${belowCeilingMost.value} m.`, belowCeilingMost));
  }
  const highest = Math.max(...rows.map(({ height }) => height));
  const lowest = Math.min(...rows.map(({ height }) => height));
  if (beamHeightMost && highest > beamHeightMost.value) {
    told.push(
      warn(`Beams at ${metres(highest)} are above the ${beamHeightMost.value} m of these rules.`, beamHeightMost),
    );
  }
  if (aboveWalkway && lowest < aboveWalkway.value) {
    told.push(
      warn(`Beams at ${metres(lowest)} are below ${aboveWalkway.value} m: people walk through them.`, aboveWalkway),
    );
  }
  const nearest = Math.min(...rows.flatMap(({ across }) => [across, hall.width - across]));
  if (toSideLeast && nearest < toSideLeast.value) {
    told.push(warn(`A row is ${metres(nearest)} from a side wall, less than ${toSideLeast.value} m.`, toSideLeast));
  }
  const inARow = beams.filter(({ row }) => row === rows[0]?.id).length;
  if (inARow > 1 && separation) {
    told.push(warn(`The hall is longer than a beam may be: ${inARow} beams in every row, end to end.`, separation));
  }
  const shortest = Math.min(...beams.map(({ separation: length }) => length));
  if (shortest < leastSeparation.value) {
    told.push(warn(`Beams of ${metres(shortest)} are shorter than the standard for beams speaks of.`, leastSeparation));
  }
  if (lowerRows === undefined && figures.lowerRowsAbove && rows.some(({ level }) => level === 'lower')) {
    told.push(
      warn(
        `The hall is higher than ${figures.lowerRowsAbove.value} m: lower rows are asked for.`,
        figures.lowerRowsAbove,
      ),
    );
  }
  return told;
}

/** What warm air under the roof does to the fire that shall be seen, and where a lower row would meet its plume. */
function warningsOfAir(
  { gradient = 0, roofRise = 0, convectiveHeat }: WarmAir,
  hall: PlannedHall,
  rows: readonly PlannedRow[],
  { figures }: RuleSet,
): Warning[] {
  const top = topOf(hall);
  const told: Warning[] = [];
  const highest = Math.max(...rows.map(({ height }) => height));
  const stops = gradient > 0 ? riseHeight(convectiveHeat, gradient) : Number.POSITIVE_INFINITY;
  if (stops < highest) {
    const low = rows.filter(({ height, level }) => level === 'lower' && height <= stops);
    const at = Math.max(1, Math.floor(0.9 * stops));
    const reach = figures.lowerRowReach?.value ?? 50 * visiblePlumeWidth.value;
    const apart = (2 * reach * at) / 100;
    told.push(
      warn(
        `In air that grows ${gradient} K/m warmer the smoke of ${convectiveHeat} kW stops at ${metres(stops)}, below the beams at ${metres(highest)}. ` +
          (low.length > 0
            ? `The rows at ${metres(Math.max(...low.map(({ height }) => height)))} stand below that height.`
            : `A row at ${at} m would meet its plume if beams stand no more than ${metres(apart)} apart: ${rowsFor(hall.width, { betweenBeams: apart, toSide: apart / 2 })} of them.`),
        figures.lowerRowReach ?? visiblePlumeWidth,
      ),
    );
  }
  if (roofRise > 0) {
    const least = leastFire(roofRise, top);
    if (least > convectiveHeat) {
      told.push(
        warn(
          `Roof air ${roofRise} K warmer than at the floor keeps smoke out until the fire gives ${Math.ceil(least)} kW of convective heat; ${convectiveHeat} kW were asked for.`,
        ),
      );
    }
  }
  return told;
}

const metres = (value: number): string => `${Number(value.toFixed(2))} m`;
