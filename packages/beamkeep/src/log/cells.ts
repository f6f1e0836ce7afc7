/*
 * The general way of reading a line: as text, cell by cell. It knows quotes and every way of writing a number that a
 * log may hold. Lines that need none of this go the plain way (lineReader.ts), with the same result.
 */

/** Bytes of the characters that have a meaning in a log. */
export const newline = 10;
export const carriageReturn = 13;
export const comma = 44;

/**
 * The cells of a line, without the blanks and quotes around them; undefined where a quote is left open. A quote
 * opens a quoted cell only at the cell's beginning; a doubled quote in it stands for one.
 *
 * @param line without its line end
 * @param separator one character
 */
export function cellsOf(line: string, separator: string): string[] | undefined {
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim());
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    while (line[at] === ' ') at++;
    if (line[at] === '"') {
      let text = '';
      for (;;) {
        const close = line.indexOf('"', at + 1);
        if (close < 0) return undefined;
        text += line.slice(at + 1, close);
        at = close + 1;
        if (line[at] !== '"') break;
        text += '"';
      }
      const next = line.indexOf(separator, at);
      const tail = next < 0 ? line.slice(at) : line.slice(at, next);
      cells.push((text + tail).trim());
      if (next < 0) return cells;
      at = next + 1;
    } else {
      const next = line.indexOf(separator, at);
      cells.push((next < 0 ? line.slice(at) : line.slice(at, next)).trim());
      if (next < 0) return cells;
      at = next + 1;
    }
  }
}

const missing = new Set(['', 'nan', 'na', 'null']);
const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/**
 * The number in a cell; NaN where it is missing (empty, NaN, NA, null); undefined where it is neither. A percent sign
 * behind it changes nothing.
 *
 * @param cell without the blanks around it
 * @param decimalComma whether a comma can mark decimals (it cannot where it separates cells)
 */
export function cellNumber(cell: string, decimalComma: boolean): number | undefined {
  let text = cell.endsWith('%') ? cell.slice(0, -1).trimEnd() : cell;
  if (missing.has(text.toLowerCase())) return Number.NaN;
  if (decimalComma) text = text.replace(',', '.');
  text = text.replace('\u2212', '-');
  if (!decimal.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}

/** What is said of a line with the wrong number of cells. */
export function cellCountTrouble(found: number, wanted: number, separator: string): string {
  const hint = separator === ',' && found > wanted ? ' (if the decimal is a comma, separate cells with ";")' : '';
  return `${found} ${found === 1 ? 'cell' : 'cells'} where the header has ${wanted}${hint}`;
}
