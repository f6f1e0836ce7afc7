import type { Sampling } from '../../site/index.js';

/** How a logger writes, and what goes wrong with it. */
export interface Recording {
  /** Spread of the sampling instants, as a share of the interval. */
  readonly jitter: number;
  /** How much slow the logger's interval runs, as a share. */
  readonly drift: number;
  /** Resolution of the clock [ms]. */
  readonly tick: number;
  readonly sampling: Sampling;
  readonly clock: 'utc' | 'local' | 'offset' | 'unix-seconds' | 'unix-milliseconds' | 'day-first' | 'month-first';
  /** Name of the time column, or two names: date and time. */
  readonly timeColumn: string | readonly [string, string];
  readonly separator: ',' | ';' | '\t';
  readonly decimalComma: boolean;
  readonly percentSign: boolean;
  readonly byteOrderMark: boolean;
  readonly lineEnd: '\n' | '\r\n';
  /** How a missing cell is written. */
  readonly missing: '' | 'NaN' | 'NA' | 'null';
  /** One reading a line: time, name, value. */
  readonly longForm: boolean;
  /** Whether side channels stand before the beams. */
  readonly sideFirst: boolean;
  /** Shares of lines lost, written twice, written late, and broken. */
  readonly lost: number;
  readonly doubled: number;
  readonly displaced: number;
  readonly broken: number;
}

/** A logger that does everything right. */
export const plainRecording: Recording = {
  jitter: 0,
  drift: 0,
  tick: 1000,
  sampling: 'regular',
  clock: 'utc',
  timeColumn: 'time',
  separator: ',',
  decimalComma: false,
  percentSign: false,
  byteOrderMark: false,
  lineEnd: '\n',
  missing: '',
  longForm: false,
  sideFirst: false,
  lost: 0,
  doubled: 0,
  displaced: 0,
  broken: 0,
};
