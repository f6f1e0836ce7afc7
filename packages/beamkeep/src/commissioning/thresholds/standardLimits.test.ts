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
  const kept = (asks: RegExp, settings: object) => line(asks, settings).map((l) => l.kept);
  it('a limit is kept at its very figure, and no further', () => {
    const figure = (asks: RegExp) => line(asks)[0]?.limit as number;
    const [least, most] = [figure(/separation at least/), figure(/separation at most/)];
    expect(kept(/separation at least/, { separation: least })).toEqual(['yes']);
    expect(kept(/separation at least/, { separation: least - 0.1 })).toEqual(['no']);
    expect(kept(/separation at most/, { separation: most })).toEqual(['yes']);
    expect(kept(/separation at most/, { separation: most + 0.1 })).toEqual(['no']);
  });
  it('delays are held against the seconds of a rapid loss: a fire by the alarm, a deep loss by the longer one', () => {
    const fire = /the signal of that fire/;
    const deep = /the signal of that loss/;
    const [within] = line(fire).map(({ limit }) => limit as number);
    expect(kept(fire, { alarmDelay: within })).toEqual(['yes']);
    expect(kept(fire, { alarmDelay: (within as number) + 1 })).toEqual(['no']);
    expect(line(deep, { alarmDelay: 5, faultDelay: 40 })[0]?.found).toBe(40);
    expect(line(deep, { alarmDelay: 20, faultDelay: 4 })[0]?.found).toBe(20);
  });
  it('the filter that must stay quiet is thinner than the threshold, the one that must alarm is not', () => {
    expect(kept(/no alarm within 30 s/, { alarmThreshold: 35 })).toEqual(['yes']);
    expect(kept(/no alarm within 30 s/, { alarmThreshold: 8 })).toEqual(['no']);
    expect(kept(/alarm from a filter of/, { alarmThreshold: 35 })).toEqual(['yes']);
    const quiet = line(/no alarm within 30 s/)[0]?.limit as number;
    expect(kept(/no alarm within 30 s/, { alarmThreshold: 100 * (1 - 10 ** (-quiet / 10)) - 0.01 })).toEqual(['no']);
  });
  it('Russian and Chinese lines hold the threshold from both sides, in dB', () => {
    const most = line(/threshold at most/, { alarmThreshold: 75 }); // 6.02 dB
    expect(most.map(({ limit, kept: each }) => [limit, each])).toEqual([
      [5.2, 'no'],
      [10, 'yes'],
    ]);
  });
  it('BS 5839 lets a beam of 35 % and less hang under a higher ceiling than one of more', () => {
    const [low, high] = [35, 36].map(
      (alarmThreshold) => line(/ceiling, above the beam/, { alarmThreshold, height: 9 })[0]?.limit as number,
    );
    expect(low).toBeGreaterThan(high as number);
    expect(kept(/ceiling, above the beam/, { height: low })).toEqual(['yes']);
    expect(kept(/ceiling, above the beam/, { height: (low as number) + 1 })).toEqual(['no']);
    expect(kept(/ceiling, above the beam/, {})).toEqual(['not known']);
  });
  it('equipment without compensation keeps the rule for it, one that does not say is not known', () => {
    expect(kept(/compensation that ends/, { compensation: 'none' })).toEqual(['yes']);
    expect(line(/compensation that ends/, { compensation: 'none' })[0]?.found).toBe(0);
    expect(kept(/compensation that ends/, { compensation: 'unknown' })).toEqual(['not known']);
  });
  it('a slow fire grows by a quarter of the threshold an hour, and minutes are asked for', () => {
    const [slow] = line(/a fire that grows by/);
    expect(slow).toMatchObject({
      asks: 'a fire that grows by 0.468 dB an hour alarms within',
      unit: 'min',
      kept: 'not known',
    });
    // 1.6 times the threshold at that pace, and 100 s: 6.4 hours at the most
    expect(slow?.limit).toBeGreaterThan(240);
    expect(slow?.limit).toBeLessThan(400);
  });
});
