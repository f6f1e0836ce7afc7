import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, chanceOf, dayOf, hourOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe } from '../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../columns/index.js';
import { dayShift, fadesByDay, jumpsAsItStands, staysByDay } from './lasting.js';

/** A loss of each hour over some days [dB]. */
const hourly = (days: number, loss: (hour: number) => number): Float64Array =>
  Float64Array.from({ length: 24 * days }, (_, h) => loss(h));

describe('dayShift', () => {
  const step = (h: number): number => (h < 24 * 6 + 10 ? 0 : 0.4);
  it('of a step is the step, whatever repeats with the day and grows beside it', () => {
    const shift = dayShift(
      hourly(12, (h) => step(h) + Math.cos((h / 12) * Math.PI) + 0.01 * h),
      24,
      24 * 6 + 10,
      1,
    );
    expect(shift.middle).toBeCloseTo(0.4, 6);
    expect(shift.quarter).toBeCloseTo(0.4, 6);
    expect(shift.usual).toBeCloseTo(0, 6);
    expect(staysByDay(shift, 0.4)).toBe(true);
    expect(fadesByDay(shift, 0.4)).toBe(false);
  });
  it('of a gain counts towards its sign', () =>
    expect(
      dayShift(
        hourly(12, (h) => -step(h)),
        24,
        24 * 6 + 10,
        -1,
      ).middle,
    ).toBeCloseTo(0.4, 6));
  it('of mist for eight hours is none in most hours', () => {
    const shift = dayShift(
      hourly(12, (h) => (h >= 154 && h < 162 ? 0.4 : 0)),
      24,
      154,
      1,
    );
    expect(staysByDay(shift, 0.4)).toBe(false);
    expect(fadesByDay(shift, 0.4)).toBe(true);
  });
  it('of a beam whose days all differ is no more than usual', () => {
    const shift = dayShift(
      hourly(12, (h) => 0.4 * (Math.floor((h - 10) / 24) % 2)),
      24,
      154,
      1,
    );
    expect(shift.usual).toBeGreaterThan(0.3);
    expect(staysByDay(shift, 0.4)).toBe(false);
  });
  it('across a gap of two days holds the hours on its far sides together', () => {
    const gap = hourly(12, (h) => (h >= 100 && h < 154 ? Number.NaN : step(h)));
    const shift = dayShift(gap, 24, 154, 1);
    expect(shift.hours).toBeGreaterThan(0.9);
    expect(shift.middle).toBeCloseTo(0.4, 6);
  });
  it('knows nothing at the very end of a log, which speaks against a step', () => {
    const shift = dayShift(
      hourly(12, (h) => (h < 286 ? 0 : 0.4)),
      24,
      286,
      1,
    );
    expect(shift.hours).toBeLessThan(0.1);
    expect(fadesByDay(shift, 0.4)).toBe(true);
  });
});

describe('lastingSteps', () => {
  const stepsOf = (level: (t: number) => number, sampled: object = {}) => {
    const { parts, view } = pictured(recordOf(level, { days: 20, ...sampled }));
    return parts.steps.map(({ row, loss }) => ({ time: view.trace.time[row] as number, loss }));
  };
  const when = at(9, 10);

  it('finds a knock that slips on for hours, to the sample', () => {
    const slipping = (t: number): number => (t < when ? 1 : 0.92 - 0.035 * (1 - Math.exp(-(t - when) / 1.8e7)));
    const [step, ...others] = stepsOf(slipping);
    expect(others).toEqual([]);
    expect(step?.time).toBe(when);
    expect(step?.loss).toBeGreaterThan(0.3);
  });
  it.each([1, -1])('finds what changed in a gap of five hours: towards %d', (sign) => {
    const before = sign > 0 ? 1 : 0.9;
    const steps = stepsOf((t) => (t > when - 1.8e7 && t < when ? Number.NaN : t < when ? before : 1.9 - before));
    expect(steps.map(({ time, loss }) => [time, Math.sign(loss)])).toEqual([[when, sign]]);
  });
  it('finds a small step on a beam that sways much more', () => {
    const steps = stepsOf((t) => left(lobe(0.5 + 0.12 * heatOfDay(t)) + (t < at(9, 22) ? 0 : 0.2)), { days: 24 });
    expect(steps).toHaveLength(1);
    expect(Math.abs((steps[0]?.time ?? 0) - at(9, 22))).toBeLessThanOrEqual(3_600_000);
  });
  it('finds a cleaning under mist of every night', () => {
    const mist = (t: number): number =>
      0.5 * chanceOf(dayOf(t), 3) * Math.max(0, Math.cos(((hourOf(t) - 5) / 8) * Math.PI));
    const steps = stepsOf((t) => left((hourOf(t) < 9 ? mist(t) : 0) + (t < at(10, 15) ? 0.35 : 0)));
    expect(steps.map(({ time, loss }) => [time, Math.sign(loss)])).toEqual([[at(10, 15), -1]]);
  });
  it('takes neither the begin nor the end of a stuck reading for a step', () => {
    const sway = (t: number): number => left(lobe(0.4 + 0.1 * heatOfDay(t)));
    const stuck = recordOf(sway, { days: 20 });
    const { time, level, low, high } = stuck.trace;
    const held = sway(at(8, 15));
    for (let i = 0; i < time.length; i++) {
      if ((time[i] as number) < at(8, 15) || (time[i] as number) > at(10)) continue;
      level[i] = held;
      low[i] = held;
      high[i] = held;
    }
    const picture = pictured(stuck);
    expect(picture.held).toHaveLength(1);
    expect(picture.parts.steps).toEqual([]);
  });
});

describe('jumpsAsItStands', () => {
  const rows = 60;
  const time = Float64Array.from({ length: rows }, (_, i) => at(0) + i * 15 * minute);
  const clear = new Uint8Array(rows);
  /** Loss of a beam that sways, with a knock before row 30 [dB]. */
  const swayed = (phase: number, knock: number, instants = time) =>
    instants.map((t, i) => 0.4 * Math.sin((2 * Math.PI * (t - at(0))) / (24 * hour) + phase) + (i < 30 ? 0 : knock));

  it('law: holds for a knock under any sway, and not for one of three times its size, or of the other sign', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.double({ min: 0.15, max: 2, noNaN: true }),
        fc.boolean(),
        (phase, size, gained) => {
          const loss = gained ? -size : size;
          const jumps = (told: number) =>
            jumpsAsItStands(time, swayed(phase, loss), clear, { row: 30, loss: told }, hour);
          expect([jumps(loss), jumps(3 * loss), jumps(-loss)]).toEqual([true, false, false]);
        },
      ),
      { seed: 1, numRuns: 50 },
    ));
  it('knows nothing of what fell within a gap, or at an end of the log', () => {
    const apart = time.map((t, i) => (i < 30 ? t : t + 5 * hour));
    expect(jumpsAsItStands(apart, swayed(0, 0, apart), clear, { row: 30, loss: 0.3 }, hour)).toBe(true);
    expect(jumpsAsItStands(time, swayed(0, 0), clear, { row: 5, loss: 0.3 }, hour)).toBe(true);
  });
  it('looks past rows that are hidden', () => {
    const hidden = Uint8Array.from(clear, (_, i) => (i >= 28 && i < 32 ? 1 : 0));
    const loss = swayed(1, 0.3).map((v, i) => (hidden[i] === 1 ? 10 : v));
    expect(jumpsAsItStands(time, loss, hidden, { row: 30, loss: 0.3 }, 2 * hour)).toBe(true);
    expect(jumpsAsItStands(time, loss, clear, { row: 30, loss: 0.3 }, 2 * hour)).toBe(false);
  });
});
