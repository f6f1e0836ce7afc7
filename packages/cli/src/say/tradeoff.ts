import { type FireCost, limitsBroken, type ToldBand, type TradeOff, type TradeOffJson } from 'beamkeep/planning';
import { inputText } from './inputText.js';
import type { Look } from './look.js';
import { figure } from './numbers.js';
import { plainly } from './plain.js';
import { table } from './table.js';
import { limitsText, warningsText } from './warnings.js';
import { wrap } from './wrap.js';

/** Rows and columns of the table of settings that are shown. */
const shown = 7;

/** Rows of the frontier that are shown. */
const shownOfFrontier = 20;

const told = (value: number | null, unit: string): string =>
  value === null ? 'not found' : `${figure(value)} ${unit}`;

const band = ({ value, early, late }: ToldBand, unit: string): string =>
  `${told(value, unit)} (${told(early, unit)} to ${told(late, unit)})`;

/** At most so many of some values, spread over them, the first and the last included; and one more to be kept. */
function thinned(length: number, keep: number, most = shown): number[] {
  const step = Math.max(1, (length - 1) / (most - 1));
  const at = Array.from({ length: Math.min(most, length) }, (_, i) => Math.round(i * step));
  return [...new Set([...at, ...(keep < 0 ? [] : [keep])])].sort((a, b) => a - b);
}

/** Time to alarm of the slowest fire, and nuisance, for some of the settings. */
function grid({ thresholds, delays, fires, nuisance, current }: TradeOff): string[][] {
  const rows = thinned(thresholds.length, thresholds.indexOf(current.threshold));
  const columns = thinned(delays.length, delays.indexOf(current.delay));
  const slowest = (row: number, column: number): number =>
    Math.max(...fires.map(({ cells }) => cells[row]?.[column]?.seconds.value ?? Number.POSITIVE_INFINITY));
  const cell = (row: number, column: number): string => {
    const seconds = slowest(row, column);
    const time = Number.isFinite(seconds) ? `${figure(seconds)} s` : '-';
    const perYear = nuisance?.cells[row]?.[column]?.perYear;
    const mark = thresholds[row] === current.threshold && delays[column] === current.delay ? '*' : '';
    return `${time}${perYear === undefined ? '' : ` ${figure(perYear)}`}${mark}`;
  };
  return [
    ['', ...columns.map((column) => `${delays[column]} s`)],
    ...rows.map((row) => [`${thresholds[row]} %`, ...columns.map((column) => cell(row, column))]),
  ];
}

/** The letter of a limit, in the order in which they are listed. */
const letter = (at: number): string => String.fromCharCode(97 + at);

/** Settings that no other beats: both costs with their limits, and which limits of standards they break. */
function frontierText({ thresholds, delays, nuisance, frontier, limits }: TradeOff, { colours }: Look): string {
  const kept = thinned(frontier.length, -1, shownOfFrontier);
  const rows = kept.flatMap((at) => {
    const setting = frontier[at];
    if (setting === undefined) return [];
    const { threshold, delay, seconds, early, late, perYear } = setting;
    const counted = nuisance?.cells[thresholds.indexOf(threshold)]?.[delays.indexOf(delay)];
    const broken = limitsBroken(setting, limits).map((limit) => letter(limits.indexOf(limit)));
    return [
      [
        `${threshold} %`,
        `${delay} s`,
        `${figure(seconds)} s (${figure(early)} to ${figure(late)})`,
        `${figure(perYear)}${counted ? ` (${figure(counted.low)} to ${figure(counted.high)})` : ''}`,
        broken.length === 0 ? 'kept' : `outside ${broken.join(', ')}`,
      ],
    ];
  });
  const some = kept.length < frontier.length ? ` (${kept.length} of ${frontier.length}; all with --json)` : '';
  const heads = ['threshold', 'delay', 'slowest fire', 'nuisance a year', 'limits'].map(colours.faint);
  return `  No other setting beats these in both costs${some}:\n${table([heads, ...rows], '  ')}`;
}

function fireText({ fire, current: { seconds, heat } }: FireCost, width: number): string {
  const found =
    seconds.early === null
      ? 'not found while it was watched'
      : `alarm after ${band(seconds, 's')}, the fire then gives ${band(heat, 'kW')}`;
  return wrap(`${fire}: ${found}.`, width, '  - ', '    ');
}

function beamText(weighed: TradeOff, look: Look): string {
  const { width, colours } = look;
  const { beam, current, fires, nuisance, frontier, limits, warnings, assumed } = weighed;
  const row = weighed.thresholds.indexOf(current.threshold);
  const column = weighed.delays.indexOf(current.delay);
  const now = nuisance?.cells[row]?.[column];
  const observed =
    nuisance === null
      ? 'No log was given: the nuisance is not known.'
      : `The log holds ${figure(nuisance.years)} years.${
          now === undefined
            ? ''
            : ` At the current setting it alarmed ${now.count} ${now.count === 1 ? 'time' : 'times'}: ${figure(now.perYear)} a year (${figure(now.low)} to ${figure(now.high)}).`
        }`;
  return [
    colours.strong(`Beam ${beam}: ${current.threshold} % held for ${current.delay} s`),
    wrap(observed, width, '  '),
    ['  At the current setting', ...fires.map((fire) => fireText(fire, width))].join('\n'),
    `  Slowest fire${nuisance === null ? '' : ' and nuisance a year'}, by threshold and delay (* the current setting):\n${table(grid(weighed), '  ')}`,
    ...(frontier.length === 0 ? [] : [frontierText(weighed, look)]),
    [
      '  Limits of standards',
      ...limits.map(({ of, side, value, words, clause }, at) =>
        wrap(
          `${of} ${side === 'least' ? 'at least' : 'at most'} ${figure(value)} ${of === 'delay' ? 's' : '%'}: ${words} [${clause}]`,
          width,
          `  ${letter(at)}. `,
          '     ',
        ),
      ),
    ].join('\n'),
    ...warningsText(
      warnings.map((words) => ({ words })),
      width,
    ),
    ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
  ].join('\n\n');
}

/** Both costs of threshold and delay, for people. */
export function tradeOffText(answer: TradeOffJson, look: Look): string {
  const { beams, input } = plainly(answer);
  const [first] = beams;
  return `${[
    ...beams.map((beam) => beamText(beam, look)),
    ...(first === undefined ? [] : [limitsText(first, look.width)]),
    ...(input === null ? [] : [inputText(input, look.width)]),
  ].join('\n\n')}\n`;
}
