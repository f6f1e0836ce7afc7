import { strFromU8, strToU8 } from 'fflate';
import { carriageReturn, cellCountTrouble, cellNumber, cellsOf, comma, newline } from './cells.js';
import { type TimeReader, timeReader } from './civilTime.js';
import type { NoteBook } from './inputNotes.js';
import { clockCell, type LinePlan, nameCell, skipped, timeCell, valueCell } from './linePlan.js';
import { type ClockStretch, clockStretch } from './localClock.js';
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
    const { window, plan, times } = this;
    const { actions, separator } = plan;
    const { values, capacity } = window;
    const decimalComma = plan.decimalComma ? comma : point;
    const lastCell = actions.length - 1;
    let start = from;
    while (start < to && window.count < capacity) {
      const row = window.count;
      let p = start;
      let time = Number.NaN;
      let dateFrom = 0;
      let dateTo = 0;
      let column = skipped;
      let value = Number.NaN;
      for (let c = 0; c <= lastCell; c++) {
        const action = actions[c] as number;
        let byte = bytes[p] as number;
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
          let number: number;
          if (p === first) {
            if (negative) return start;
            number = Number.NaN;
          } else {
            const decimals = dot < 0 ? 0 : p - dot - 1;
            if (whole > Number.MAX_SAFE_INTEGER || decimals > 22 || (dot >= 0 && p - first === 1)) return start;
            number = (negative ? -whole : whole) / (powers[decimals] as number);
          }
          while (byte === space) byte = bytes[++p] as number;
          if (byte === percent) {
            byte = bytes[++p] as number;
            while (byte === space) byte = bytes[++p] as number;
          }
          if (action >= 0) values[action * capacity + row] = number;
          else value = number;
        } else if (action === timeCell) {
          if (this.joinsClock) {
            dateFrom = p;
            while (byte !== separator && byte !== newline && byte !== quote) byte = bytes[++p] as number;
            dateTo = p;
          } else {
            time = times.read(bytes, p);
            if (Number.isNaN(time)) return start;
            p = times.end;
            byte = bytes[p] as number;
          }
        } else if (action === clockCell) {
          const clockFrom = p;
          while (byte !== separator && byte !== newline && byte !== quote && byte !== carriageReturn) {
            byte = bytes[++p] as number;
          }
          time = this.readJoined(bytes, dateFrom, dateTo, clockFrom, p);
          if (Number.isNaN(time)) return start;
        } else if (action === nameCell) {
          const nameFrom = p;
          while (byte !== separator && byte !== newline && byte !== quote) byte = bytes[++p] as number;
          column = this.plainName(bytes, nameFrom, p);
          if (column < skipped) return start;
        } else {
          while (byte !== separator && byte !== newline && byte !== quote && byte !== carriageReturn) {
            byte = bytes[++p] as number;
          }
        }
        if (c < lastCell) {
          if (byte !== separator) return start;
          p++;
        } else {
          if (byte === carriageReturn) byte = bytes[++p] as number;
          if (byte !== newline) return start;
          p++;
        }
      }
      this.lines++;
      if (plan.columnOf === undefined) this.commit(row, time);
      else if (column >= 0) this.put(time, column, value);
      start = p;
    }
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
    const drop = (kind: string, found?: string) => {
      this.dropped++;
      around.notes.note(around.file, this.lines, kind, found);
      return next;
    };
    if (line.trim() === '') return drop('empty line');
    const cells = cellsOf(line, this.separatorText);
    if (cells === undefined) return drop('a quote is left open', line);
    while (cells.length > actions.length && cells.at(-1) === '') cells.pop();
    if (cells.length !== actions.length) {
      return drop(cellCountTrouble(cells.length, actions.length, this.separatorText), line);
    }
    const date = cells[actions.indexOf(timeCell)] ?? '';
    const clockAt = actions.indexOf(clockCell);
    const text = clockAt < 0 ? date : `${date} ${cells[clockAt]}`;
    const encoded = strToU8(text);
    const time = times.read(encoded, 0);
    if (Number.isNaN(time) || times.end !== encoded.length) return drop('not a time', text);
    let name = '';
    for (let c = 0; c < actions.length; c++) {
      const action = actions[c] as number;
      const cell = cells[c] ?? '';
      if (action === nameCell) name = cell;
      if (action < 0 && action !== valueCell) continue;
      let value = cellNumber(cell, plan.decimalComma);
      if (value === undefined) {
        around.notes.note(around.file, this.lines, 'not a number', cell);
        value = Number.NaN;
      }
      if (action >= 0) window.values[action * window.capacity + window.count] = value;
      else {
        const column = this.columnOf(name);
        if (column !== undefined) this.put(time, column, value);
      }
    }
    if (plan.columnOf === undefined) this.commit(window.count, time);
    return next;
  }

  /** Time that stands in two cells. */
  private readJoined(bytes: Uint8Array, dateFrom: number, dateTo: number, from: number, to: number): number {
    const { joined, times } = this;
    const length = dateTo - dateFrom + 1 + to - from;
    if (length >= joined.length) return Number.NaN;
    joined.set(bytes.subarray(dateFrom, dateTo));
    joined[dateTo - dateFrom] = space;
    joined.set(bytes.subarray(from, to), dateTo - dateFrom + 1);
    joined[length] = 0;
    const time = times.read(joined, 0);
    return times.end === length ? time : Number.NaN;
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
  private put(clock: number, column: number, value: number): void {
    const { window, around, times } = this;
    const { values, capacity, width } = window;
    const last = window.count - 1;
    const time = times.local ? this.instant(clock, window.count) : clock;
    const at = column * capacity + last;
    if (last >= 0 && window.time[last] === time && Object.is(values[at], around.absent)) {
      values[at] = value;
      return;
    }
    for (let c = 0; c < width; c++) values[c * capacity + window.count] = around.absent;
    values[column * capacity + window.count] = value;
    this.add(window.count, time);
  }

  /** Keeps the row whose values have been written. */
  private commit(row: number, clock: number): void {
    const { window, plan, around, times } = this;
    for (const column of plan.absent) window.values[column * window.capacity + row] = around.absent;
    this.add(row, times.local ? this.instant(clock, row) : clock);
  }

  private add(row: number, time: number): void {
    const { window } = this;
    window.time[row] = time;
    window.line[row] = this.lines;
    if (!(time > (row > 0 ? (window.time[row - 1] as number) : window.lastLeft))) window.disordered = true;
    window.count = row + 1;
  }

  /** Instant of a clock reading without an offset. */
  private instant(clock: number, row: number): number {
    let { stretch } = this;
    if (stretch === undefined || clock < stretch.from || clock >= stretch.to) {
      stretch = clockStretch(this.around.zone, clock);
      this.stretch = stretch;
    }
    if (stretch.kind !== 'plain') this.noteChange(stretch, row);
    return clock - stretch.offset;
  }

  private noteChange(stretch: ClockStretch, row: number): void {
    const { around } = this;
    if (stretch.kind === 'doubled') {
      this.doubled.push({ row, stretch });
      this.window.disordered = true;
      return;
    }
    around.notes.note(
      around.file,
      this.lines,
      `${hoursInWords(stretch, around.zone)} is skipped by the clocks: read as if they had not yet gone forward`,
    );
  }
}

/** A stretch of clock readings, for a message: `2027-10-31 01:00 to 02:00 (Europe/Lisbon)`. */
export function hoursInWords({ from, to }: ClockStretch, zone: string): string {
  const text = (clock: number) => new Date(clock).toISOString().replace('T', ' ').slice(0, 16);
  return `${text(from)} to ${text(to).slice(11)} (${zone})`;
}
