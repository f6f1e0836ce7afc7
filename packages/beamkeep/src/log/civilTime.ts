import { day, hour, minute, second } from '../columns/index.js';
import type { TimeFormat } from '../site/index.js';

/*
 * Times as they stand in a log, read from bytes. Nothing is made of the bytes but the instant: no text, no date
 * object but one a day.
 *
 *     2027-01-08T06:40:00.250Z      iso: also a blank for the T, an offset, none (local time), no seconds, the date alone
 *     20270108T064000Z              iso, basic form
 *     08.01.2027 06:40, 8/1/27 6:40 PM   day-first, month-first
 *     1799390400.25, 1799390400250  unix-seconds, unix-milliseconds
 *
 * A reader gives the time and leaves `end` behind the last byte it used, so that the caller can look what follows.
 */

/**
 * Reads a time from bytes. One reader serves one file: it remembers the last day it met. What it finds stands in its
 * fields, because a number that is returned would be made anew on each line.
 */
export interface TimeReader {
  /**
   * @param bytes the text
   * @param from where the time begins
   * @returns whether a time of this format begins here
   */
  read(bytes: Uint8Array, from: number): boolean;
  /**
   * With `local` false: the instant [ms since 1970-01-01 UTC]; with `local` true: what the clock showed, as if it stood
   * in UTC [ms].
   */
  time: number;
  /** Behind the last byte read. */
  end: number;
  /** Whether the time read had no offset. */
  local: boolean;
}

const zero = 48;
const isDigit = (byte: number | undefined): boolean => byte !== undefined && byte >= zero && byte <= 57;

/**
 * A reader of one time format.
 *
 * @param format of the times
 * @param comma whether a comma can mark decimals (it cannot where it separates cells)
 */
export function timeReader(format: TimeFormat, comma: boolean): TimeReader {
  if (format === 'unix-seconds') return new UnixReader(0, comma);
  if (format === 'unix-milliseconds') return new UnixReader(3, comma);
  if (format === 'iso') return new IsoReader(comma);
  return new DayMonthReader(format === 'day-first', comma);
}

/** Start of a civil day [ms since 1970-01-01]; NaN where the calendar has no such day. */
function startOfDay(year: number, month: number, date: number): number {
  if (year < 1900 || month < 1 || month > 12 || date < 1 || date > 31) return Number.NaN;
  const start = Date.UTC(year, month - 1, date);
  return new Date(start).getUTCDate() === date ? start : Number.NaN;
}

/** `Z`, or what ends a cell: a separator, a quote, a line end. */
const endsClock = (byte: number): boolean =>
  byte === 90 || byte === 44 || byte === 59 || byte === 9 || byte === 34 || byte === 10 || byte === 13;

/** What the readers of clock times share: digits, the time of day, the offset. */
class ClockReader {
  time = Number.NaN;
  end = 0;
  local = true;
  protected readonly comma: number;
  /** Start of the day that was read last [ms]. */
  protected dayStart = Number.NaN;

  constructor(comma: boolean) {
    this.comma = comma ? 44 : 46;
  }

  /** `hh:mm:ss`, then `Z` or a cell's end, of the same day as before: most times of most logs. False for all others. */
  protected quickClock(bytes: Uint8Array, from: number): boolean {
    const tensOfHours = (bytes[from] as number) - zero;
    const hours = (bytes[from + 1] as number) - zero;
    const tensOfMinutes = (bytes[from + 3] as number) - zero;
    const minutes = (bytes[from + 4] as number) - zero;
    const tensOfSeconds = (bytes[from + 6] as number) - zero;
    const seconds = (bytes[from + 7] as number) - zero;
    const next = bytes[from + 8] as number;
    if (
      bytes[from + 2] !== 58 ||
      bytes[from + 5] !== 58 ||
      tensOfHours < 0 ||
      hours < 0 ||
      hours > 9 ||
      tensOfHours * 10 + hours > 23 ||
      tensOfMinutes < 0 ||
      tensOfMinutes > 5 ||
      minutes < 0 ||
      minutes > 9 ||
      tensOfSeconds < 0 ||
      tensOfSeconds > 5 ||
      seconds < 0 ||
      seconds > 9 ||
      !endsClock(next) ||
      next === this.comma
    ) {
      return false;
    }
    this.local = next !== 90;
    this.end = this.local ? from + 8 : from + 9;
    const minutesOfDay = (tensOfHours * 10 + hours) * 60 + tensOfMinutes * 10 + minutes;
    this.time = this.dayStart + (minutesOfDay * 60 + tensOfSeconds * 10 + seconds) * 1000;
    return true;
  }

  /** Keeps a time; false where it is NaN. */
  protected found(time: number): boolean {
    this.time = time;
    return !Number.isNaN(time);
  }

  /** Two digits as a number, or NaN. */
  protected two(bytes: Uint8Array, at: number): number {
    const tens = (bytes[at] as number) - zero;
    const ones = (bytes[at + 1] as number) - zero;
    return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
  }

  /** Milliseconds of a decimal fraction that begins at `end`; digits beyond the microsecond are passed over. */
  protected fraction(bytes: Uint8Array): number {
    let p = this.end + 1;
    let whole = 0;
    let digits = 0;
    for (; isDigit(bytes[p]); p++) {
      if (digits < 6) {
        whole = whole * 10 + (bytes[p] as number) - zero;
        digits++;
      }
    }
    if (digits === 0) return Number.NaN;
    this.end = p;
    return digits <= 3 ? whole * 10 ** (3 - digits) : whole / 10 ** (digits - 3);
  }

  /** `hh:mm[:ss[.f]]`, or `h:mm…` where `loose`, from `end` on; NaN where there is none. */
  protected timeOfDay(bytes: Uint8Array, loose: boolean, colons = true): number {
    let p = this.end;
    let hours = this.two(bytes, p);
    if (!Number.isNaN(hours)) p += 2;
    else {
      if (!loose || !isDigit(bytes[p])) return Number.NaN;
      hours = (bytes[p] as number) - zero;
      p++;
    }
    if (colons && bytes[p++] !== 58) return Number.NaN;
    const minutes = this.two(bytes, p);
    p += 2;
    let seconds = 0;
    this.end = p;
    if (colons ? bytes[p] === 58 : isDigit(bytes[p])) {
      if (colons) p++;
      seconds = this.two(bytes, p);
      this.end = p + 2;
    }
    // 24:00 ends a day (ISO 8601:2004, 4.2.3); second 60 is a leap second.
    if (!(hours <= 24 && minutes <= 59 && seconds <= 60)) return Number.NaN;
    let time = hours * hour + minutes * minute + seconds * second;
    const mark = bytes[this.end];
    if ((mark === 46 || mark === this.comma) && isDigit(bytes[this.end + 1])) time += this.fraction(bytes);
    return time <= day + second ? time : Number.NaN;
  }

  /** `Z`, `+hh:mm`, `+hhmm`, `+hh` from `end` on [ms]; 0 and `local` where there is none; NaN where it is malformed. */
  protected offset(bytes: Uint8Array): number {
    let p = this.end;
    const sign = bytes[p];
    this.local = false;
    if (sign === 90 || sign === 122) {
      this.end = p + 1;
      return 0;
    }
    if (sign !== 43 && sign !== 45) {
      this.local = true;
      return 0;
    }
    const hours = this.two(bytes, p + 1);
    p += 3;
    let minutes = 0;
    if (bytes[p] === 58 || isDigit(bytes[p])) {
      if (bytes[p] === 58) p++;
      minutes = this.two(bytes, p);
      p += 2;
    }
    this.end = p;
    if (!(hours <= 23 && minutes <= 59)) return Number.NaN;
    return (sign === 43 ? 1 : -1) * (hours * hour + minutes * minute);
  }
}

/** ISO 8601, and the same order of year, month and day with other marks. */
class IsoReader extends ClockReader implements TimeReader {
  private dayKey = -1;
  /** The eleven bytes before the time of day, as they stood in the last line that was read at length. */
  private yearBytes = -1;
  private monthBytes = -1;
  private dateBytes = -1;

  read(bytes: Uint8Array, from: number): boolean {
    if (
      (((bytes[from + 8] as number) << 16) | ((bytes[from + 9] as number) << 8) | (bytes[from + 10] as number)) !==
        this.dateBytes ||
      fourBytes(bytes, from + 4) !== this.monthBytes ||
      fourBytes(bytes, from) !== this.yearBytes
    ) {
      return this.found(this.readAtLength(bytes, from));
    }
    return this.quickClock(bytes, from + 11) || this.found(this.readAtLength(bytes, from));
  }

  private readAtLength(bytes: Uint8Array, from: number): number {
    const mark = bytes[from + 4];
    if (isDigit(mark)) return this.basic(bytes, from);
    if ((mark !== 45 && mark !== 47 && mark !== 46) || bytes[from + 7] !== mark) return Number.NaN;
    const century = this.two(bytes, from);
    const year = this.two(bytes, from + 2);
    const month = this.two(bytes, from + 5);
    const date = this.two(bytes, from + 8);
    this.end = from + 10;
    const time = this.after(bytes, (century * 100 + year) * 10000 + month * 100 + date, true);
    const between = bytes[from + 10];
    if (!Number.isNaN(time) && (between === 84 || between === 32)) {
      this.yearBytes = fourBytes(bytes, from);
      this.monthBytes = fourBytes(bytes, from + 4);
      this.dateBytes = ((bytes[from + 8] as number) << 16) | ((bytes[from + 9] as number) << 8) | between;
    }
    return time;
  }

  private basic(bytes: Uint8Array, from: number): number {
    let key = 0;
    for (let p = from; p < from + 8; p += 2) key = key * 100 + this.two(bytes, p);
    this.end = from + 8;
    if (bytes[this.end] !== 84 && bytes[this.end] !== 116) return Number.NaN;
    return this.after(bytes, key, false);
  }

  /** Instant of a day (as yyyymmdd) and what follows it. */
  private after(bytes: Uint8Array, key: number, colons: boolean): number {
    if (key !== this.dayKey) {
      if (Number.isNaN(key)) return Number.NaN;
      this.dayKey = key;
      // The quick way reads the clock of the day before: a broken line must not lend its day to the next good one.
      this.dateBytes = -1;
      this.dayStart = startOfDay(Math.floor(key / 10000), Math.floor(key / 100) % 100, key % 100);
    }
    let p = this.end;
    const mark = bytes[p];
    this.local = true;
    if (mark === 84 || mark === 116) p++;
    else if (mark === 32) {
      while (bytes[p] === 32) p++;
      if (!isDigit(bytes[p])) return this.dayStart;
    } else return this.dayStart;
    this.end = p;
    const time = this.dayStart + this.timeOfDay(bytes, false, colons);
    return time - this.offset(bytes);
  }
}

/** Four bytes as one number. */
const fourBytes = (bytes: Uint8Array, at: number): number =>
  ((bytes[at] as number) << 24) |
  ((bytes[at + 1] as number) << 16) |
  ((bytes[at + 2] as number) << 8) |
  (bytes[at + 3] as number);

const nothing = new Uint8Array(0);

/** Day, month and year, in the one order or the other. */
class DayMonthReader extends ClockReader implements TimeReader {
  private dayKey = -1;
  private readonly dayFirst: boolean;
  /** What stood before the time of day in the last line that was read at length. */
  private before: Uint8Array = nothing;

  constructor(dayFirst: boolean, comma: boolean) {
    super(comma);
    this.dayFirst = dayFirst;
  }

  read(bytes: Uint8Array, from: number): boolean {
    const { before } = this;
    let same = 0;
    while (same < before.length && before[same] === bytes[from + same]) same++;
    if (same > 0 && same === before.length && this.quickClock(bytes, from + same)) return true;
    return this.found(this.readAtLength(bytes, from));
  }

  private readAtLength(bytes: Uint8Array, from: number): number {
    this.end = from;
    const first = this.oneOrTwo(bytes);
    const mark = bytes[this.end++];
    if (mark !== 46 && mark !== 47 && mark !== 45) return Number.NaN;
    const second = this.oneOrTwo(bytes);
    if (bytes[this.end++] !== mark) return Number.NaN;
    let year = this.two(bytes, this.end);
    this.end += 2;
    const rest = this.two(bytes, this.end);
    if (!Number.isNaN(rest)) {
      year = year * 100 + rest;
      this.end += 2;
    } else year += 2000;
    const key = year * 10000 + (this.dayFirst ? second * 100 + first : first * 100 + second);
    if (key !== this.dayKey) {
      if (Number.isNaN(key)) return Number.NaN;
      this.dayKey = key;
      // As above: a broken line must not lend its day to the next good one.
      this.before = nothing;
      this.dayStart = startOfDay(year, this.dayFirst ? second : first, this.dayFirst ? first : second);
    }
    this.local = true;
    let p = this.end;
    if (bytes[p] === 44 && this.comma === 44) p++;
    if (bytes[p] === 84 || bytes[p] === 116) p++;
    while (bytes[p] === 32) p++;
    if (p === this.end || !isDigit(bytes[p])) return this.dayStart;
    this.end = p;
    this.before = bytes.slice(from, p);
    const clock = this.timeOfDay(bytes, true);
    const time = this.dayStart + this.halfDay(bytes, clock);
    return time - this.offset(bytes);
  }

  private oneOrTwo(bytes: Uint8Array): number {
    const p = this.end;
    if (!isDigit(bytes[p])) return Number.NaN;
    if (!isDigit(bytes[p + 1])) {
      this.end = p + 1;
      return (bytes[p] as number) - zero;
    }
    this.end = p + 2;
    return this.two(bytes, p);
  }

  /** Time of day, moved to the half of the day that `AM` or `PM` behind it names. */
  private halfDay(bytes: Uint8Array, clock: number): number {
    let p = this.end;
    while (bytes[p] === 32) p++;
    const letter = (bytes[p] as number) | 32;
    if ((letter !== 97 && letter !== 112) || ((bytes[p + 1] as number) | 32) !== 109) return clock;
    this.end = p + 2;
    if (clock < hour || clock >= 13 * hour) return Number.NaN;
    return (clock % (12 * hour)) + (letter === 112 ? 12 * hour : 0);
  }
}

/** Seconds or milliseconds since 1970, fractions included. */
class UnixReader implements TimeReader {
  time = Number.NaN;
  end = 0;
  readonly local = false;
  /** Decimals by which the number is finer than it is written: 0 for seconds, 3 for milliseconds. */
  private readonly finer: number;
  private readonly comma: number;

  constructor(finer: number, comma: boolean) {
    this.finer = finer;
    this.comma = comma ? 44 : 46;
  }

  read(bytes: Uint8Array, from: number): boolean {
    let p = from;
    const negative = bytes[p] === 45;
    if (negative) p++;
    let whole = 0;
    const first = p;
    for (; isDigit(bytes[p]); p++) whole = whole * 10 + (bytes[p] as number) - zero;
    if (p === first || p - first > 14) return false;
    let decimals = 0;
    if ((bytes[p] === 46 || bytes[p] === this.comma) && isDigit(bytes[p + 1])) {
      for (p++; isDigit(bytes[p]); p++) {
        if (decimals + this.finer < 6 && whole < 9e14) {
          whole = whole * 10 + (bytes[p] as number) - zero;
          decimals++;
        }
      }
    }
    this.end = p;
    const shift = 3 - this.finer - decimals;
    const time = shift >= 0 ? whole * 10 ** shift : whole / 10 ** -shift;
    this.time = negative ? -time : time;
    return true;
  }
}
