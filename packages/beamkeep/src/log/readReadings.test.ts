import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { readReadings } from './readReadings.js';

const site = parseSite({
  beams: [
    { id: 'B1', layout: 'reflective', separation: 40, signalColumn: 'b1', temperatureColumn: 't_roof' },
    { id: 'B2', layout: 'reflective', separation: 40, signalColumn: 'b2' },
  ],
});
const at = (second: number) => new Date(Date.UTC(2027, 0, 20, 10, 0, second));
const csv = (column = 'b1') =>
  `time,${column}\n${Array.from({ length: 30 }, (_, s) => `${at(s).toISOString()},${s === 7 ? '' : (99 + 0.5 * (s % 3)).toFixed(1)}`).join('\n')}\n`;

describe('readReadings', () => {
  it('reads one beam of a log that holds no other', async () => {
    const { time, readings, powerStep, intervalSeconds, end, input } = await readReadings(logOfText(csv()), site, {
      beam: 'B1',
    });
    expect(time).toHaveLength(29);
    expect(readings[1]).toBe(99.5);
    expect({ powerStep, intervalSeconds, end, lines: input.lines }).toEqual({
      powerStep: 0.5,
      intervalSeconds: 1,
      end: at(29).getTime(),
      lines: 31,
    });
  });
  it('keeps to the stretch asked for', async () => {
    const question = { beam: 'B1', from: at(10).getTime(), to: at(12).getTime() };
    const { time, end } = await readReadings(logOfText(csv()), site, question);
    expect([...time]).toEqual([10, 11, 12].map((s) => at(s).getTime()));
    expect(end).toBe(at(12).getTime());
  });
  it('asks which beam, and refuses one that is not there', async () => {
    await expect(readReadings(logOfText(csv()), site, {})).rejects.toThrow('name one of B1, B2 (--beam)');
    await expect(readReadings(logOfText(csv()), site, { beam: 'B9' })).rejects.toThrow('"B9" is no beam of this site');
    await expect(readReadings(logOfText(csv()), site, { beam: 'B2' })).rejects.toThrow('b2');
  });
  it('refuses a stretch without readings', async () =>
    expect(readReadings(logOfText(csv()), site, { beam: 'B1', from: at(50).getTime() })).rejects.toThrow(
      'between --from and --to',
    ));
});
