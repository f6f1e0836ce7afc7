import type { InputReport } from 'beamkeep';
import { counted, plural } from './numbers.js';
import { wrap } from './wrap.js';

const shown = 12;

/** What was read and what had to be mended or dropped, line by line, the first dozen of it. */
export function inputText({ lines, dropped, notes }: InputReport, width: number): string {
  const head = `Input: ${plural(lines, 'line')}, ${dropped === 0 ? 'none' : counted(dropped)} dropped.`;
  const told = notes.slice(0, shown).map(({ line, lines: many, what, file }) => {
    const where = `${file === undefined ? '' : `${file}:`}${line}`;
    return `${file === undefined ? `line ${where}` : where}: ${what}${many > 1 ? ` (${plural(many, 'line')})` : ''}`;
  });
  const rest = notes.length - told.length;
  const more = rest > 0 ? [`and ${plural(rest, 'more note')}: --json lists all`] : [];
  return [head, ...[...told, ...more].map((note) => wrap(note, width, '  ', '    '))].join('\n');
}
