import { describe, expect, it } from 'vitest';
import { decibelsToLevel } from '../attenuation/index.js';
import { parseSite } from '../site/index.js';
import { slowGainOf } from './beamResponder.js';
import { respondTo } from './respondTo.js';

const site = (more: object, visits: object[] = []) =>
  parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...more }], visits });
const beamOf = (more: object = {}) => {
  const [beam] = site(more).beams;
  if (!beam) throw new Error('no beam');
  return beam;
};
const circumstances = { sampling: 'regular', intervalSeconds: 1, resets: [] } as const;
const second = 1000;

/** Changes of a level that is given second by second. */
const told = (more: object, level: (seconds: number) => number, seconds: number, options = {}) => {
  const time = Float64Array.from({ length: seconds }, (_, i) => i * second);
  const { changes } = respondTo(
    beamOf(more),
    { time, level: time.map((t) => level(t / second)) },
    circumstances,
    options,
  );
  return changes.map((change) => `${change.time / second} ${change.state}`).join(', ');
};

describe('a beam from level to state', () => {
  it('decides as the equipment does: a residue of 0.5 makes a threshold of 35 % need 70 % of smoke', () => {
    expect(told({ covered: 50 }, () => 0.31, 30)).toBe('0 normal');
    expect(told({ covered: 50 }, () => 0.3, 30)).toBe('0 normal, 10 fire');
    expect(told({ covered: 50, coveredSubtracted: true }, () => 0.65, 30)).toBe('0 normal, 10 fire');
  });

  // EN 54-12:2002, 5.6 (the clause seen, its figures from memory): fire within 30 s, fire or fault within 60 s
  it('6 dB within a second is a fire within 30 s', () =>
    expect(told({}, (s) => decibelsToLevel(s < 5 ? 0 : 6), 60)).toBe('0 normal, 15 fire'));
  it('10 dB within a second is a fire or a fault within 60 s', () =>
    expect(told({}, (s) => decibelsToLevel(s < 5 ? 0 : 10), 60)).toBe('0 normal, 15 fault'));

  // GB 14003-2005 as a teaching text quotes it: a filter of 0.9 dB gives no alarm in 30 s
  it('a filter of 0.9 dB gives no alarm in 30 s', () =>
    expect(told({ layout: 'end-to-end' }, () => decibelsToLevel(0.9), 31)).toBe('0 normal'));
  // UFGS 13852N, 2.2.6: failure or blockage of the beam gives trouble, not alarm
  it('a blocked beam alone is trouble, not fire', () =>
    expect(told({}, (s) => (s < 5 ? 1 : 0), 600)).toBe('0 normal, 15 fault'));
});

describe('slow gain', () => {
  const compensation = { limitDecibels: 0.5 };
  it('is not applied unless asked for', () =>
    expect(told({ compensation }, (s) => 1 - s / 1000, 400)).toBe('0 normal, 360 fire'));
  it('is applied where asked for, and ends in a fault', () =>
    expect(told({ compensation }, () => 0.88, 60, { compensate: { decibelsPerHour: 61 } })).toBe('0 normal, 40 fault'));
  it('takes limit and rate from the site and the question', () => {
    expect(slowGainOf(beamOf({ compensation }), {})).toBeUndefined();
    expect(slowGainOf(beamOf({ compensation: 'none' }), { compensate: true })).toBeUndefined();
    expect(slowGainOf(beamOf({ compensation }), { compensate: true })).toEqual(compensation);
    expect(slowGainOf(beamOf({ compensation }), { compensate: { decibelsPerHour: 1 } })).toEqual({
      limitDecibels: 0.5,
      decibelsPerHour: 1,
    });
    expect(slowGainOf(beamOf(), { compensate: true })?.limitDecibels).toBeCloseTo(0.6 * 1.87086643, 7);
  });
  it('is carried over', () => {
    const beam = beamOf({ compensation });
    const time = Float64Array.from({ length: 3000 }, (_, i) => i * 10 * second);
    const level = time.map((t) => 1 - t / 60_000_000);
    const options = { compensate: true };
    const how = { ...circumstances, intervalSeconds: 10 };
    const whole = respondTo(beam, { time, level }, how, options);
    const first = respondTo(beam, { time: time.subarray(0, 1234), level: level.subarray(0, 1234) }, how, options);
    const carried = structuredClone(first.memory);
    const rest = { time: time.subarray(1234), level: level.subarray(1234) };
    const later = respondTo(beam, rest, how, { ...options, carried });
    expect([...first.changes, ...later.changes]).toEqual(whole.changes);
    expect(later.memory).toEqual(whole.memory);
  });
});
