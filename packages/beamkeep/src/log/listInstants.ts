import { clockStretch } from '../clocks/index.js';
import { hoursInWords } from './lineReader.js';

/** What a clock showed. */
export interface ClockReading {
  /** With `local`: as if it stood in UTC [ms]; without: the instant [ms]. */
  readonly clock: number;
  readonly local: boolean;
}

/**
 * Instants of a short list of clock readings that is in order of time, the oldest first or the newest first, as
 * panels print them. In the hour that the clocks show twice, the order tells its two times apart: where the clock
 * stands back, the second time begins. Where nothing stands back, the first time is taken, and that is told.
 *
 * @param readings in the order of the list
 * @param zone IANA zone of the clock
 * @param note told the row that a doubt concerns, and the doubt
 * @returns instants [ms], one a reading
 */
export function listInstants(
  readings: readonly ClockReading[],
  zone: string,
  note: (row: number, told: string) => void,
): number[] {
  let rising = 0;
  for (let row = 1; row < readings.length; row++)
    rising += Math.sign((readings[row] as ClockReading).clock - (readings[row - 1] as ClockReading).clock);
  const order = [...readings.keys()];
  if (rising < 0) order.reverse();
  const instants = readings.map(({ clock }) => clock);
  /** The doubled hour that is under way: how far its clock has come, and whether it has been seen to stand back. */
  let doubled: { readonly from: number; readonly first: number; last: number; second: boolean } | undefined;
  const close = () => {
    if (doubled === undefined || doubled.second) return;
    const told = 'is shown twice by the clocks and nothing tells its two times apart: read as the first';
    note(doubled.first, `${hoursInWords(clockStretch(zone, doubled.from), zone)} ${told}`);
  };
  for (const row of order) {
    const { clock, local } = readings[row] as ClockReading;
    if (!local) continue;
    const stretch = clockStretch(zone, clock);
    instants[row] = clock - stretch.offset;
    if (stretch.kind === 'skipped') {
      const hours = hoursInWords(stretch, zone);
      note(row, `${hours} is skipped by the clocks: read as if they had not yet gone forward`);
    }
    if (stretch.kind !== 'doubled') continue;
    if (doubled?.from !== stretch.from) {
      close();
      doubled = { from: stretch.from, first: row, last: clock, second: false };
    }
    if (clock < doubled.last) doubled.second = true;
    doubled.last = clock;
    if (doubled.second) instants[row] = (instants[row] as number) + stretch.repeat;
  }
  close();
  return instants;
}
