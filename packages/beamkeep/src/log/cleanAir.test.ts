import { describe, expect, it } from 'vitest';
import { day, minute } from '../columns/index.js';
import { cleanAirFound, cleanAirTold } from './cleanAir.js';

const start = Date.UTC(2027, 0, 4);
const minutes = (days: number, reading: (at: number) => number) => {
  const time = Float64Array.from({ length: days * 1440 }, (_, at) => start + at * minute);
  return [time, time.map((_, at) => reading(at))] as const;
};

describe('cleanAirFound', () => {
  it('what a steady beam reads', () =>
    expect(cleanAirFound(...minutes(3, () => 2131), 0)).toEqual({ reading: 2131, from: start }));
  it('stands above a night of mist and below an hour of sun', () => {
    const reading = (at: number) => (at % 1440 < 360 ? 1700 : at % 1440 < 420 ? 2500 : 2131);
    expect(cleanAirFound(...minutes(3, reading), 0)?.reading).toBe(2131);
  });
  it('a first day with the beam covered is not the measure', () => {
    const found = cleanAirFound(...minutes(4, (at) => (at < 1440 ? 12 : 2131)), 12);
    expect(found).toEqual({ reading: 2131, from: start + day });
  });
  it('days that are dark but for a few hours: the best of them', () => {
    const found = cleanAirFound(...minutes(3, (at) => (at % 1440 < 1200 ? 12 : 2131)), 12);
    expect(found).toEqual({ reading: 2131, from: start });
  });
  it('a beam without light tells nothing, and is taken for dark', () => {
    for (const covered of [0, 12]) {
      const found = cleanAirFound(...minutes(3, () => covered), covered);
      expect(found?.reading).toBeGreaterThan(900);
      expect(cleanAirTold(found ?? { reading: 0, from: 0 }, { signalUnit: 'counts' })).toMatch(/^cleanAir unknown/);
    }
  });
  it('of no samples there is none', () =>
    expect(cleanAirFound(new Float64Array(0), new Float64Array(0), 0)).toBeUndefined());
  it('is told with its unit and its day', () =>
    expect(cleanAirTold({ reading: 2131, from: start }, { signalUnit: 'counts' })).toBe(
      "cleanAir 2131 counts, from the log's first good stretch (2027-01-04)",
    ));
});
