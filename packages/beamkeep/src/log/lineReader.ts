import { strFromU8, strToU8 } from 'fflate';
import { type ClockStretch, clockStretch } from '../clocks/index.js';
import { carriageReturn, cellCountTrouble, cellNumber, cellsOf, comma, newline } from './cells.js';
import { type TimeReader, timeReader } from './civilTime.js';
import type { NoteBook, NoteDetail } from './inputNotes.js';
import { clockCell, type LinePlan, nameCell, skipped, timeCell, valueCell } from './linePlan.js';
import type { RowWindow } from './rowWindow.js';

/*
 * From bytes to rows. Each line is first tried the plain way: byte by byte, no text made, numbers built from their
 * digits. That way accepts only what it understands to the last byte; any other line goes the general way, as text,
 * which also knows what to say about it. A number of digits w and d decimals is w / 10^d, correctly rounded as long as
 * w < 2^53 and d <= 22 (both are then exact in binary floating point), so equal to what JavaScript makes of the text.
 */

const powers = Float64Array.from({ length: 23 }, (_, digits) => 10 ** digits);
const quote = 34;
const space = 32;
const percent = 37;
const minus = 45;
const point = 46;

/** What a reader is told about its surroundings. */
export interface LineSurroundings {
  readonly file: string;
  readonly zone: string;
  readonly notes: NoteBook;
  /** Stands for a value that a line says nothing of. */
  readonly absent: number;
  /** False: no line goes the plain way. */
  readonly plain: boolean;
}

/** Reads the lines of one file into a window. */
export class LineReader {
  /** Lines read so far. */
  lines: number;
  /** Lines that gave nothing. */
  dropped = 0;
  /** Rows of the window whose clock reading was shown twice, in order of arrival. */
  doubled: { readonly row: number; readonly stretch: ClockStretch }[] = [];
  private stretch: ClockStretch | undefined;
  /** Clock readings from which `offset` is taken off, and no more is to be done. */
  private plainFrom = Number.POSITIVE_INFINITY;
  private plainTo = Number.NEGATIVE_INFINITY;
  private offset = 0;
  private readonly times: TimeReader;
  private readonly separatorText: string;
  private readonly joinsClock: boolean;
  private readonly joined = new Uint8Array(128);
  private readonly names = new Map<string, number | undefined>();
  private nameBytes: { readonly bytes: Uint8Array; readonly column: number }[] = [];
  private expected = 0;

  constructor(
    private readonly plan: LinePlan,
    private readonly window: RowWindow,
    private readonly around: LineSurroundings,
    headerLines: number,
  ) {
    this.lines = headerLines;
    this.times = timeReader(plan.format, plan.decimalComma);
    this.joinsClock = plan.actions.includes(clockCell);
    this.separatorText = String.fromCharCode(plan.separator);
  }

  /**
   * Reads lines until they end or the window is full.
   *
   * @param bytes whole lines, each with its line end
   * @param from where to begin
   * @param to behind the last line end
   * @returns behind the last line read
   */
  read(bytes: Uint8Array, from: number, to: number): number {
    const { window } = this;
    let p = from;
    while (p < to && window.count < window.capacity) {
      if (this.around.plain) p = this.readPlain(bytes, p, to);
      if (p < to && window.count < window.capacity) p = this.readGeneral(bytes, p);
    }
    return p;
  }

  /** Reads lines the plain way until one is not plain; gives where that one begins. */
  private readPlain(bytes: Uint8Array, from: number, to: number): number {
    const { window, plan, times, joinsClock } = this;
    const { actions, separator } = plan;
    const { values, capacity, time: rowTime, line: rowLine } = window;
    const decimalComma = plan.decimalComma ? comma : point;
    const lastCell = actions.length - 1;
    const oneRowALine = plan.columnOf === undefined && plan.absent.length === 0;
    let { lines } = this;
    let row = window.count;
    let last = row > 0 ? (rowTime[row - 1] as number) : window.lastLeft;
    let start = from;
    let p = from;
    plainLines: while (start < to && row < capacity) {
      let dateFrom = 0;
      let dateTo = 0;
      let column = skipped;
      let value = Number.NaN;
      for (let c = 0; c <= lastCell; c++) {
        const action = actions[c] as number;
        const cellEnd = c < lastCell ? separator : newline;
        let byte = bytes[p] as number;
        if (action >= 0) {
          // Most cells are digits, perhaps with a sign and a point, and end at once.
          const from = p;
          const negative = byte === minus;
          if (negative) byte = bytes[++p] as number;
          const first = p;
          let whole = 0;
          let digit = byte - 48;
          while (digit >= 0 && digit <= 9) {
            whole = whole * 10 + digit;
            byte = bytes[++p] as number;
            digit = byte - 48;
          }
          let decimals = 0;
          if ((byte === point || byte === decimalComma) && p > first) {
            const mark = p;
            byte = bytes[++p] as number;
            digit = byte - 48;
            while (digit >= 0 && digit <= 9) {
              whole = whole * 10 + digit;
              byte = bytes[++p] as number;
              digit = byte - 48;
            }
            decimals = p - mark - 1;
          }
          if (byte === cellEnd && p > first && whole <= Number.MAX_SAFE_INTEGER && decimals <= 22) {
            values[action * capacity + row] = (negative ? -whole : whole) / (powers[decimals] as number);
            p++;
            continue;
          }
          p = from;
          byte = bytes[p] as number;
        }
        const isQuoted = byte === quote;
        if (isQuoted) byte = bytes[++p] as number;
        if (action >= 0 || action === valueCell) {
          while (byte === space) byte = bytes[++p] as number;
          const negative = byte === minus;
          if (negative) byte = bytes[++p] as number;
          const first = p;
          let whole = 0;
          let dot = -1;
          for (;;) {
            const digit = byte - 48;
            if (digit >= 0 && digit <= 9) whole = whole * 10 + digit;
            else if ((byte === point || byte === decimalComma) && dot < 0) dot = p;
            else break;
            byte = bytes[++p] as number;
          }
          let number = Number.NaN;
          if (p === first) {
            if (negative) break plainLines;
          } else {
            const decimals = dot < 0 ? 0 : p - dot - 1;
            if (whole > Number.MAX_SAFE_INTEGER || decimals > 22 || (dot >= 0 && p - first === 1)) break plainLines;
            number = (negative ? -whole : whole) / (powers[decimals] as number);
          }
          if (byte === space || byte === percent) {
            while (byte === space) byte = bytes[++p] as number;
            if (byte === percent) byte = bytes[++p] as number;
            while (byte === space) byte = bytes[++p] as number;
          }
          if (action >= 0) values[action * capacity + row] = number;
          else value = number;
        } else if (action === timeCell && !joinsClock) {
          if (!times.read(bytes, p)) break plainLines;
          p = times.end;
          byte = bytes[p] as number;
        } else {
          const cellFrom = p;
          const end = isQuoted ? quote : separator;
          while (byte !== end && byte !== newline && byte !== quote && byte !== carriageReturn) {
            byte = bytes[++p] as number;
          }
          if (action === timeCell) {
            dateFrom = cellFrom;
            dateTo = p;
          } else if (action === clockCell) {
            if (!this.readJoined(bytes, dateFrom, dateTo, cellFrom, p)) break plainLines;
          } else if (action === nameCell) {
            column = this.plainName(bytes, cellFrom, p);
            if (column < skipped) break plainLines;
          }
        }
        if (isQuoted) {
          if (byte !== quote) break plainLines;
          byte = bytes[++p] as number;
        }
        if (c === lastCell && byte === carriageReturn) byte = bytes[++p] as number;
        if (byte !== cellEnd) break plainLines;
        p++;
      }
      lines++;
      start = p;
      const { time } = times;
      if (oneRowALine && (!times.local || (time >= this.plainFrom && time < this.plainTo))) {
        const instant = times.local ? time - this.offset : time;
        rowTime[row] = instant;
        rowLine[row] = lines;
        if (!(instant > last)) window.disordered = true;
        last = instant;
        row++;
      } else {
        this.lines = lines;
        window.count = row;
        if (plan.columnOf === undefined) this.commit();
        else if (column >= 0) this.put(column, value);
        row = window.count;
        last = row > 0 ? (rowTime[row - 1] as number) : window.lastLeft;
      }
    }
    this.lines = lines;
    window.count = row;
    return start;
  }

  /** Reads the line that begins at `from` as text. */
  private readGeneral(bytes: Uint8Array, from: number): number {
    const { plan, window, around, times } = this;
    const { actions } = plan;
    const lineEnd = bytes.indexOf(newline, from);
    this.lines++;
    const line = strFromU8(bytes.subarray(from, bytes[lineEnd - 1] === carriageReturn ? lineEnd - 1 : lineEnd));
    const next = lineEnd + 1;
    const drop = (kind: string, detail?: NoteDetail) => {
      this.dropped++;
      around.notes.note(around.file, this.lines, kind, detail);
      return next;
    };
    if (line.trim() === '') return drop('empty line');
    const cells = cellsOf(line, this.separatorText);
    if (cells === undefined) return drop('a quote is left open', { found: line });
    while (cells.length > actions.length && cells.at(-1) === '') cells.pop();
    if (cells.length !== actions.length) {
      const what = cellCountTrouble(cells.length, actions.length, this.separatorText);
      return drop('not as many cells as the header has', { what, found: line });
    }
    const date = cells[actions.indexOf(timeCell)] ?? '';
    const clockAt = actions.indexOf(clockCell);
    const text = clockAt < 0 ? date : `${date} ${cells[clockAt]}`;
    const encoded = strToU8(text);
    if (!times.read(encoded, 0) || times.end !== encoded.length) return drop('not a time', { found: text });
    let name = '';
    for (let c = 0; c < actions.length; c++) {
      const action = actions[c] as number;
      const cell = cells[c] ?? '';
      if (action === nameCell) name = cell;
      if (action < 0 && action !== valueCell) continue;
      let value = cellNumber(cell, plan.decimalComma);
      if (value === undefined) {
        around.notes.note(around.file, this.lines, 'not a number', { found: cell });
        value = Number.NaN;
      }
      if (action >= 0) window.values[action * window.capacity + window.count] = value;
      else {
        const column = this.columnOf(name);
        if (column !== undefined) this.put(column, value);
      }
    }
    if (plan.columnOf === undefined) this.commit();
    return next;
  }

  /** Time that stands in two cells. */
  private readJoined(bytes: Uint8Array, dateFrom: number, dateTo: number, from: number, to: number): boolean {
    const { joined, times } = this;
    const length = dateTo - dateFrom + 1 + to - from;
    if (length >= joined.length) return false;
    let at = 0;
    for (let p = dateFrom; p < dateTo; p++) joined[at++] = bytes[p] as number;
    joined[at++] = space;
    for (let p = from; p < to; p++) joined[at++] = bytes[p] as number;
    joined[at] = newline;
    return times.read(joined, 0) && times.end === length;
  }

  /** Column of a name that has been met before; `skipped` where it is not wanted; less where it is new. */
  private plainName(bytes: Uint8Array, from: number, to: number): number {
    const { nameBytes } = this;
    for (let tried = 0; tried < nameBytes.length; tried++) {
      this.expected = this.expected + 1 < nameBytes.length ? this.expected + 1 : 0;
      const known = nameBytes[this.expected];
      if (known === undefined || known.bytes.length !== to - from) continue;
      let same = 0;
      while (same < known.bytes.length && known.bytes[same] === bytes[from + same]) same++;
      if (same === known.bytes.length) return known.column;
    }
    return skipped - 1;
  }

  private columnOf(name: string): number | undefined {
    if (this.names.has(name)) return this.names.get(name);
    const column = this.plan.columnOf?.(name, this.lines);
    if (this.names.size < 1000) {
      this.names.set(name, column);
      if (this.names.size <= 64) this.nameBytes.push({ bytes: strToU8(name), column: column ?? skipped });
    }
    return column;
  }

  /** Long form: adds one reading, to the row of its time where that is the last one. */
  private put(column: number, value: number): void {
    const { window, around } = this;
    const { values, capacity, width } = window;
    const row = window.count;
    const time = this.instant();
    const at = column * capacity + row - 1;
    if (row > 0 && window.time[row - 1] === time && Object.is(values[at], around.absent)) {
      values[at] = value;
      return;
    }
    for (let c = 0; c < width; c++) values[c * capacity + row] = around.absent;
    values[column * capacity + row] = value;
    this.add(time);
  }

  /** Adds the row whose values have been written. */
  private commit(): void {
    const { window, plan, around } = this;
    for (const column of plan.absent) window.values[column * window.capacity + window.count] = around.absent;
    this.add(this.instant());
  }

  private add(time: number): void {
    const { window, around } = this;
    const row = window.count++;
    window.time[row] = time;
    window.line[row] = this.lines;
    if (!(time > (row > 0 ? (window.time[row - 1] as number) : window.lastLeft))) window.disordered = true;
    const { stretch } = this;
    if (!this.times.local || stretch === undefined || stretch.kind === 'plain') return;
    if (stretch.kind === 'doubled') {
      this.doubled.push({ row, stretch });
      window.disordered = true;
    } else {
      const hours = hoursInWords(stretch, around.zone);
      const told = `${hours} is skipped by the clocks: read as if they had not yet gone forward`;
      around.notes.note(around.file, this.lines, told);
    }
  }

  /** Instant of the time that was read last; of a doubled hour its first time. */
  private instant(): number {
    const { time: clock, local } = this.times;
    if (!local) return clock;
    if (clock < this.plainFrom || clock >= this.plainTo) {
      let { stretch } = this;
      if (stretch === undefined || clock < stretch.from || clock >= stretch.to) {
        stretch = clockStretch(this.around.zone, clock);
      }
      const plain = stretch.kind === 'plain';
      this.stretch = stretch;
      this.offset = stretch.offset;
      this.plainFrom = plain ? stretch.from : Number.POSITIVE_INFINITY;
      this.plainTo = plain ? stretch.to : Number.NEGATIVE_INFINITY;
    }
    return clock - this.offset;
  }
}

/** A stretch of clock readings, for a message: `2027-10-31 01:00 to 02:00 (Europe/Lisbon)`. */
export function hoursInWords({ from, to }: ClockStretch, zone: string): string {
  const text = (clock: number) => new Date(clock).toISOString().replace('T', ' ').slice(0, 16);
  return `${text(from)} to ${text(to).slice(11)} (${zone})`;
}
