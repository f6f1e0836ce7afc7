import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { standardLimits } from './standardLimits.js';

const beamOf = (settings: object = {}) => {
  const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...settings }] }).beams;
  if (!beam) throw new Error('no beam');
  return beam;
};
const line = (asks: RegExp, settings: object = {}) => standardLimits(beamOf(settings)).filter((l) => asks.test(l.asks));

describe('standardLimits', () => {
  it('35 % is 1.87 dB, and keeps every limit that can be compared', () => {
    const limits = standardLimits(beamOf({ height: 9 }));
    expect(limits.filter(({ kept }) => kept === 'no')).toEqual([]);
    expect(limits[0]?.found).toBeCloseTo(1.8709, 4);
  });
  it('a threshold of 8 % lies below the smallest, 0.4 dB or 8.8 %', () =>
    expect(line(/threshold at least/, { alarmThreshold: 8 }).map(({ kept }) => kept)).toEqual(['no', 'no', 'no']));
  it('a threshold of 80 % would miss the rapid loss of 6 dB', () =>
    expect(line(/^fire from a loss/, { alarmThreshold: 80 })[0]?.kept).toBe('no'));
  it('a fault threshold of 95 % would miss the rapid loss of 10 dB, 90 % just meets it', () => {
    expect(line(/fire or fault from a loss/, { faultThreshold: 95 })[0]?.kept).toBe('no');
    expect(line(/fire or fault from a loss/)[0]?.kept).toBe('yes');
  });
  it('compensation may reach 1.6 times the threshold in decibels: 1.12 dB beyond 35 %', () => {
    const asks = /compensation that ends/;
    expect(line(asks)[0]).toMatchObject({ kept: 'not known', limit: expect.closeTo(0.6 * 1.870866, 5) });
    expect(line(asks, { compensation: { limitDecibels: 1 } })[0]?.kept).toBe('yes');
    expect(line(asks, { compensation: { limitDecibels: 2 } })[0]?.kept).toBe('no');
  });
  it('says of every limit where it stands and whether it was read or remembered', () => {
    for (const { source, seen } of standardLimits(beamOf())) {
      expect(source).toMatch(/\S+ \S+/);
      expect(['read', 'from memory']).toContain(seen);
    }
  });
  it('lists what it does not know', () =>
    expect(line(/neither seen nor remembered/)[0]).toMatchObject({ kept: 'not known', limit: undefined }));
});
