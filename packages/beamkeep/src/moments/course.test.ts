import { describe, expect, it } from 'vitest';
import { minute, type Trace } from '../columns/index.js';
import { courseAbout } from './course.js';

/** A trace of one sample a minute from minute 0 on, its level [%] by the minute. */
function trace(minutes: number, level: (minute: number) => number): Trace {
  const time = Float64Array.from({ length: minutes }, (_, m) => m * minute);
  const share = time.map((_, m) => level(m) / 100);
  return {
    time,
    until: time,
    level: share,
    low: Float32Array.from(share),
    high: Float32Array.from(share),
    spread: new Float32Array(minutes),
    count: new Uint32Array(minutes).fill(1),
  };
}
/** Falls from 98 to 56 % between minute 100 and 121, stays, and comes back from 160 to 202. */
const dip = (m: number): number => {
  if (m < 100 || m >= 202) return 98;
  return m < 121 ? 98 - 2 * (m - 100) : m < 160 ? 56 : 56 + (m - 160);
};
const off = { start: 101 * minute, end: 201 * minute, sign: 1, depth: 0.42, open: false } as const;

describe('courseAbout', () => {
  it('tells a dip: before, how deep, how fast, how long, after', () => {
    const course = courseAbout(trace(400, dip), 110 * minute, off, 60);
    expect(course).toMatchObject({ kind: 'loss', start: off.start, end: off.end, open: false });
    expect(course.before).toBeCloseTo(2, 6);
    expect(course.after).toBeCloseTo(2, 6);
    expect(course.extreme).toBeCloseTo(44, 6);
    expect(course.extremeTime).toBe(121 * minute);
    // Of the 42 %, a tenth is passed after minute 102 and nine tenths at 119; back after 164 and at 198.
    expect(course.growth).toBe(17 * minute);
    expect(course.recovery).toBe(34 * minute);
  });
  it('tells light that was gained the other way round', () => {
    const course = courseAbout(
      trace(400, (m) => 196 - dip(m)),
      110 * minute,
      { ...off, sign: -1 },
      60,
    );
    expect(course.kind).toBe('gain');
    expect(course.extreme).toBeCloseTo(-40, 6);
    expect(course.growth).toBe(17 * minute);
  });
  it('does not make up what the log does not hold', () => {
    const cut = courseAbout(trace(150, dip), 110 * minute, { ...off, end: 149 * minute, open: true }, 60);
    expect(cut).toMatchObject({ open: true, recovery: Number.NaN, after: Number.NaN });
    const begun = trace(300, (m) => dip(m + 130));
    const late = courseAbout(begun, 0, { ...off, start: 0, end: 69 * minute }, 60);
    expect(late.before).toBeNaN();
    expect(late.growth).toBeNaN();
  });
  it('tells a level that is steady, and one that steps', () => {
    expect(
      courseAbout(
        trace(400, () => 88),
        200 * minute,
        undefined,
        60,
      ),
    ).toMatchObject({
      kind: 'steady',
      extreme: Number.NaN,
      growth: Number.NaN,
    });
    const step = courseAbout(
      trace(400, (m) => (m < 200 ? 95 : 80)),
      200 * minute,
      undefined,
      60,
    );
    expect(step.kind).toBe('step');
    expect([step.before, step.after]).toEqual([expect.closeTo(5, 6), expect.closeTo(20, 6)]);
    expect(step.growth).toBe(minute);
  });
  it('takes no step from noise', () => {
    const rough = (m: number) => 95 + 4 * Math.sin(m * m * 0.7) + (m < 200 ? 0 : 1.8);
    expect(courseAbout(trace(400, rough), 200 * minute, undefined, 60).kind).toBe('steady');
  });
});
