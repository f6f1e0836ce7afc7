import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hour, minute } from '../../columns/index.js';
import { besides, type ClaimedBeam, nobody } from './beside.js';

type Times = readonly (readonly [number, number])[];

type Claimed = ClaimedBeam['claimed'][number]['cause'];
const air: Claimed = { otherBeams: 'show it too' };
const knock: Claimed = { otherBeams: 'tell nothing' };
const dirt: Claimed = { otherBeams: 'doubt it if clean' };

/** A beam that watched a hundred hours, with one claim whose times are in hours. */
const beam = (times: Times, confidence = 0.8, cause: Claimed = air): ClaimedBeam => ({
  from: 0,
  to: 100 * hour,
  claimed: [
    {
      cause,
      claims: times.length === 0 ? [] : [claim(times, confidence)],
    },
  ],
});
const claim = (times: Times, confidence: number) => ({
  start: (times[0]?.[0] as number) * hour,
  end: (times.at(-1)?.[1] as number) * hour,
  episodes: times.map(([a, b]) => [a * hour, b * hour] as const),
  confidence,
});
const silent = beam([]);
/** What the others tell of the first beam's claim. */
const toldOf = (...beams: ClaimedBeam[]) => besides(beams)[0]?.[0]?.[0];

describe('besides', () => {
  it('counts how clearly another beam shows the same at the same times', () => {
    expect(toldOf(beam([[1, 2]]), beam([[1, 2]], 0.6))).toEqual({ shared: 0.6, alone: 0.4 });
    expect(
      toldOf(
        beam([
          [1, 2],
          [30, 31],
        ]),
        beam([[1, 2]], 0.6),
      ),
    ).toEqual({ shared: 0.3, alone: 0.7 });
    expect(toldOf(beam([[1, 2]]), silent)).toEqual({ shared: 0, alone: 1 });
  });
  it('takes the beam that shows it best', () =>
    expect(toldOf(beam([[1, 2]]), silent, beam([[1, 2]], 0.7), beam([[1, 2]], 0.2))?.shared).toBe(0.7));
  it('takes times half an hour apart for the same, and no more', () => {
    const later = (minutes: number) => beam([[2 + (minutes * minute) / hour, 5]], 0.6);
    expect(toldOf(beam([[1, 2]]), later(30))?.shared).toBe(0.6);
    expect(toldOf(beam([[1, 2]]), later(31))?.shared).toBe(0);
    const before = (minutes: number) => beam([[0, 1 - (minutes * minute) / hour]], 0.6);
    expect(toldOf(beam([[1, 2]]), before(30))?.shared).toBe(0.6);
    expect(toldOf(beam([[1, 2]]), before(31))?.shared).toBe(0);
  });
  it('takes a claim without single times for one long time', () => {
    const long = {
      ...beam([]),
      claimed: [{ cause: air, claims: [{ start: 0, end: 9 * hour, confidence: 0.5 }] }],
    };
    expect(toldOf(beam([[7, 8]]), long)?.shared).toBe(0.5);
    expect(toldOf(long, beam([[7, 8]], 0.4))?.shared).toBe(0.4);
  });
  describe('of dirt', () => {
    const soiled = (from: number, to: number, confidence: number) => beam([[from, to]], confidence, dirt);
    const clean = beam([], 0, dirt);
    it('doubts it as far as the others stay clean, and never counts for it', () => {
      expect(toldOf(soiled(10, 40, 0.9), clean)).toEqual({ shared: 0, alone: 1 });
      expect(toldOf(soiled(10, 40, 0.9), clean, soiled(30, 60, 0.75))).toEqual({ shared: 0, alone: 0.25 });
    });
    it('asks whether they soil at the same time, to the hour', () => {
      expect(toldOf(soiled(10, 40, 0.9), soiled(40, 60, 0.75))?.alone).toBe(0.25);
      expect(toldOf(soiled(10, 40, 0.9), soiled(41, 60, 0.75))?.alone).toBe(1);
      expect(toldOf(soiled(40, 60, 0.9), soiled(10, 39, 0.75))?.alone).toBe(1);
    });
    it('tells nothing where no other beam watched', () =>
      expect(toldOf(soiled(10, 40, 0.9), { ...clean, from: 50 * hour })).toBe(nobody));
  });
  it('tells nothing of what reaches one beam only, nor of a time that no other beam watched', () => {
    expect(toldOf(beam([[1, 2]], 0.8, knock), beam([[1, 2]], 0.6, knock))).toEqual(nobody);
    expect(toldOf(beam([[1, 2]]))).toBe(nobody);
    expect(toldOf(beam([[1, 2]]), { ...silent, from: 3 * hour })).toBe(nobody);
    expect(toldOf(beam([[8, 9]]), { ...silent, to: 7 * hour })).toBe(nobody);
    expect(toldOf(beam([[8, 9]]), { ...silent, from: Number.NaN, to: Number.NaN })).toBe(nobody);
  });
  it('law: what is shared and what is alone make one, and do not ask for the order of the others', () => {
    const times = fc
      .array(fc.tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 9 })), { maxLength: 6 })
      .map((list) => list.sort(([a], [b]) => a - b).map(([a, long]) => [a, a + long] as const));
    const score = fc.double({ min: 0, max: 1, noNaN: true });
    const others = fc.array(fc.tuple(times, score), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        times.filter(({ length }) => length > 0),
        others,
        (own, list) => {
          const beams = list.map(([of, p]) => beam(of, p));
          const told = toldOf(beam(own), ...beams);
          expect((told?.shared ?? 0) + (told?.alone ?? 0)).toBeCloseTo(1, 12);
          expect(told?.shared).toBeGreaterThanOrEqual(0);
          expect(told?.shared).toBeLessThanOrEqual(1);
          expect(toldOf(beam(own), ...beams.reverse())).toEqual(told);
        },
      ),
      { seed: 7 },
    );
  });
});
