import type { FindingJson } from 'beamkeep';
import type { Trace } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { palette } from '../say/palette.js';
import { clock } from '../say/times.js';
import { ascii, braille } from './cells.js';
import { plot } from './plot.js';

const day = 86_400_000;
const start = Date.parse('2027-01-01T00:00:00Z');

/** Sixty days, one row a day: clean, then 20 % lost, a blocked beam on day 10, no samples on days 30 to 39. */
const trace = ((): Trace => {
  const days = [...Array(60).keys()].filter((each) => each < 30 || each >= 40);
  const time = Float64Array.from(days, (each) => start + each * day);
  const level = Float64Array.from(days, (each) => (each < 20 ? 1 : 0.8));
  return {
    time,
    until: time,
    level,
    low: Float32Array.from(days, (each, row) => (each === 10 ? 0 : (level[row] ?? 0) - 0.05)),
    high: Float32Array.from(level),
    spread: new Float32Array(days.length),
    count: new Uint32Array(days.length).fill(1440),
  };
})();

const finding = (cause: FindingJson['cause'], from: number, to: number, confidence = 0.9): FindingJson => ({
  cause,
  start: new Date(start + from * day).toISOString(),
  end: new Date(start + to * day).toISOString(),
  ongoing: false,
  confidence,
  severity: cause === 'smoke-like' ? 'act' : 'note',
  summary: '',
  evidence: [],
  action: '',
  settles: '',
});

const settings = {
  width: 80,
  told: clock('UTC'),
  colours: palette(false),
  alarmLevel: 0.65,
  alarmThreshold: 35,
};
const findings = [finding('data-gap', 29, 40), finding('smoke-like', 10, 10), finding('condensation', 0, 59, 0.3)];

describe('plot', () => {
  it('draws level, threshold, gap and findings in plain ASCII', () => {
    const lines = plot(trace, findings, { ...settings, cells: ascii });
    expect(lines.join('\n')).toMatch(/^[\x20-\x7e\n]*$/);
    expect(lines[0]).toBe(`   100 % of clean |${'o'.repeat(20)}`);
    expect(lines.find((line) => line.includes('alarm at 35 %'))).toContain('#-#');
    expect(lines.find((line) => line.includes('+'))).toBe(
      `                  +${'-'.repeat(30)}${' '.repeat(10)}${'-'.repeat(20)}`,
    );
    expect(lines.find((line) => line.includes('2027-01-01'))).toMatch(/ 2027-01-01 {40}2027-03-01$/);
    const bars = lines.filter((line) => /smoke-like|data-gap|condensation/.test(line)).map((line) => line.trimStart());
    expect(bars).toEqual([
      `smoke-like ${' '.repeat(10)}*`,
      `data-gap ${' '.repeat(29)}${'='.repeat(12)}`,
      `condensation ${'.'.repeat(60)}`,
    ]);
    expect(lines.slice(-2).join('')).toContain('empty where  it went lower');
  });
  it('draws finer with Braille dots, within the width', () => {
    const lines = plot(trace, findings, { ...settings, cells: braille });
    expect(lines.filter((line) => [...line].length > 80)).toEqual([]);
    expect(lines.filter((line) => /[⠁-⣿]/.test(line)).length).toBeGreaterThanOrEqual(6);
  });
  it('draws nothing for a beam without samples', () => {
    const none = { ...trace, time: new Float64Array(), until: new Float64Array() };
    expect(plot(none, [], { ...settings, cells: braille })).toEqual([]);
  });
});
