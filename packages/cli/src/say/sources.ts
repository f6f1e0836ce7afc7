import type { Sourced } from 'beamkeep/numbers';
import type { Look } from './look.js';
import { wrap } from './wrap.js';

/** A constant, by topic and name. */
export type Entry = { readonly topic: string; readonly name: string } & Sourced;

/** Seven significant digits at most, without trailing zeros. */
const shown = (value: number): string => String(Number(value.toPrecision(7)));

function valueWords({ value, spread, range, unit }: Sourced): string {
  const uncertainty = spread === undefined ? '' : ` ± ${shown(spread)}`;
  const span = range === undefined ? '' : ` (${shown(range[0])} to ${shown(range[1])})`;
  return `${shown(value)}${uncertainty}${span}${unit === '' ? '' : ` ${unit}`}`;
}

function sourceWords(figure: Sourced): string {
  const { clause, edition } = { clause: undefined, edition: undefined, ...figure };
  const place = [figure.source, clause, edition !== undefined && figure.source.includes(edition) ? undefined : edition];
  const note = figure.note === undefined ? '' : ` Note: ${figure.note}`;
  const where = place.filter((part) => part !== undefined).join(', ');
  return `${where.startsWith(figure.seen) ? '' : `${figure.seen}: `}${where}.${note}`;
}

/** Constants for people: each with its value, how far it can be trusted, and where it stands. */
export const sourcesText = (entries: readonly Entry[], { width }: Look): string =>
  [...new Set(entries.map(({ topic }) => topic))]
    .map((topic) =>
      [
        topic,
        ...entries
          .filter((entry) => entry.topic === topic)
          .map((entry) => `  ${entry.name}  ${valueWords(entry)}\n${wrap(sourceWords(entry), width, '    ')}`),
      ].join('\n'),
    )
    .join('\n\n');
