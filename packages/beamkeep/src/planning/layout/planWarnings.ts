import { leastSeparation, visiblePlumeWidth } from '../../numbers/index.js';
import { leastFire, riseHeight } from '../../smoke/index.js';
import { figureMeanings, figureNames, placeOf, type RuleFigure, type RuleSet } from '../rules/ruleSet.js';
import { type PlannedHall, topOf } from './hall.js';
import type { PlannedBeam, PlannedRow, PlanQuestion, WarmAir, Warning } from './plan.js';
import { rowsFor } from './rowsAcross.js';

/** Everything a reader of a plan must know, with the clauses that say so. */
export const planWarnings = (
  rows: readonly PlannedRow[],
  beams: readonly PlannedBeam[],
  rules: RuleSet,
  question: PlanQuestion,
): Warning[] => [
  ...warningsOfRules(rules),
  ...warningsOfHall(question.hall, rules),
  ...warningsOfRows(rows, beams, question.hall, rules, question),
  ...(question.air === undefined ? [] : warningsOfAir(question.air, question.hall, rows, rules)),
];

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
