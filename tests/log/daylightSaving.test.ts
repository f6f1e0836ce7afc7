import { logOfText } from 'beamkeep/log';
import { describe, expect, it } from 'vitest';
import { rowsOf, siteOf } from './rowsOf.js';

/*
 * Clocks of Europe/Lisbon in 2027 (IANA tz database, rule EU): at 01:00 UTC on 28 March from 01:00 to 02:00, at
 * 01:00 UTC on 31 October from 02:00 back to 01:00.
 */

const site = siteOf(['b1'], { timeZone: 'Europe/Lisbon' });

/** A log on Lisbon's wall clocks, of samples at regular instants; some may be left out or told in another order. */
function wallClockLog(from: number, stepMinutes: number, rows: number, shows: (row: number) => boolean = () => true) {
  const lines: string[] = [];
  const instants: number[] = [];
  const clock = new Intl.DateTimeFormat('sv-SE', {
    timeZone: 'Europe/Lisbon',
    dateStyle: 'short',
    timeStyle: 'medium',
  });
  for (let row = 0; row < rows; row++) {
    const instant = from + row * stepMinutes * 60_000;
    if (!shows(row)) continue;
    instants.push(instant);
    lines.push(`${clock.format(instant)},${row % 90}`);
  }
  return { lines, instants };
}
const read = (lines: readonly string[]) => rowsOf(logOfText(`time,b1\n${lines.join('\n')}\n`), site);

const autumn = Date.UTC(2027, 9, 30, 22);
const twice = '2027-10-31 01:00 to 02:00 (Europe/Lisbon) is shown twice by the clocks';

describe('the hour that the clocks show twice', () => {
  it.each([1, 5, 15, 20, 30, 60])('told apart by the order of lines, every %d min', async (step) => {
    const { lines, instants } = wallClockLog(autumn, step, 720 / step);
    const { time, input } = await read(lines);
    expect(time).toEqual(instants);
    expect(input.notes.at(-1)?.what).toBe(`${twice}: its two times were told apart by the order of lines`);
    expect(input.notes.at(-1)?.lines).toBe(120 / step);
  });
  it('with doubled and displaced lines in it', async () => {
    const { lines, instants } = wallClockLog(autumn, 1, 600);
    const at = lines.findIndex((text) => text.includes('01:20'));
    lines.splice(at, 0, lines[at] ?? '');
    const [moved = ''] = lines.splice(at + 10, 1);
    lines.splice(at + 15, 0, moved);
    const { time, input } = await read(lines);
    expect(time).toEqual(instants);
    expect(input.dropped).toBe(1);
  });
  it('with an outage over the second time: read as the first, and told', async () => {
    const { lines, instants } = wallClockLog(autumn, 5, 120, (row) => row < 36 || row >= 48);
    const { time, input } = await read(lines);
    expect(time).toEqual(instants);
    expect(input.notes.at(-1)?.what).toBe(`${twice} and nothing tells its two times apart: read as the first`);
  });
  it('with an outage over all before the second time: read as the second, and told', async () => {
    const { lines, instants } = wallClockLog(autumn, 5, 120, (row) => row < 12 || row >= 36);
    const { time, input } = await read(lines);
    expect(time).toEqual(instants);
    expect(input.notes.at(-1)?.what).toBe(`${twice} and nothing tells its two times apart: read as the second`);
  });
});

describe('the hour that the clocks skip', () => {
  it('a log that follows the clocks has no line in it', async () => {
    const { lines, instants } = wallClockLog(Date.UTC(2027, 2, 27, 22), 5, 100);
    const { time, input } = await read(lines);
    expect(time).toEqual(instants);
    expect(input.notes).toHaveLength(1);
  });
  it('a line in it is read as if the clock had not yet gone forward, and told', async () => {
    const { time, input } = await read(['2027-03-28 00:55,1', '2027-03-28 01:00,2', '2027-03-28 02:05,3']);
    expect(time).toEqual([55, 60, 65].map((minutes) => Date.UTC(2027, 2, 28, 0, minutes)));
    expect(input.notes.at(-1)).toEqual({
      line: 3,
      lines: 1,
      what: '2027-03-28 01:00 to 02:00 (Europe/Lisbon) is skipped by the clocks: read as if they had not yet gone forward',
    });
  });
});
