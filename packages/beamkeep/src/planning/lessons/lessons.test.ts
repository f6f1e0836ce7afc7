import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { delayAgainstForkLift, delayAgainstForkLiftControls } from './delayAgainstForkLift.js';
import { dirtEatingMargin, dirtEatingMarginControls } from './dirtEatingMargin.js';
import { flankUnderHotRoof, flankUnderHotRoofControls } from './flankUnderHotRoof.js';
import { highHall, highHallControls } from './highHall.js';
import { type Control, type Lesson, startOf } from './lesson.js';
import { twoPaths, twoPathsControls } from './twoPaths.js';

interface Taught {
  readonly name: string;
  readonly controls: readonly Control[];
  teach(settings: Readonly<Record<string, number>>): Lesson;
}

const taught = <Controls extends readonly Control[]>(
  name: string,
  controls: Controls,
  teach: (settings: { readonly [C in Controls[number] as C['name']]: number }) => Lesson,
): Taught => ({
  name,
  controls,
  teach: (settings) => teach({ ...startOf(controls), ...settings } as Parameters<typeof teach>[0]),
});

const lessons = [
  taught('twoPaths', twoPathsControls, twoPaths),
  taught('delayAgainstForkLift', delayAgainstForkLiftControls, delayAgainstForkLift),
  taught('dirtEatingMargin', dirtEatingMarginControls, dirtEatingMargin),
  taught('flankUnderHotRoof', flankUnderHotRoofControls, flankUnderHotRoof),
  taught('highHall', highHallControls, highHall),
];

describe.each(lessons)('$name', ({ controls, teach }) => {
  it('begins within its sliders', () => {
    for (const { low, high, value, step } of controls) {
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
      expect(step).toBeGreaterThan(0);
    }
  });

  it('shows curves of equal columns and an answer, wherever the sliders stand', () => {
    const anywhere = fc.record(
      Object.fromEntries(
        controls.map(({ name, low, high }) => [name, fc.double({ min: low, max: high, noNaN: true })]),
      ),
    );
    fc.assert(
      fc.property(anywhere, (settings) => {
        const { series, answer, question, leftOut } = teach(settings);
        expect(question).toContain('?');
        expect(answer).not.toMatch(/NaN|undefined|Infinity/);
        expect(leftOut.at(-1)).toContain('licensed people');
        for (const { x, y } of series) {
          expect(x).toHaveLength(y.length);
          expect(x.every(Number.isFinite)).toBe(true);
        }
      }),
      { seed: 5, numRuns: 12 },
    );
  });
});

describe('what the lessons teach', () => {
  it('one threshold: eight times the path, an eighth of the smoke', () => {
    const { answer } = twoPaths({ threshold: 35, short: 20, long: 160 });
    expect(answer).toContain('8 times thinner');
    expect(answer).toContain('0.0935 dB/m'); // 1.871 dB over 20 m
  });

  it('delay: half the nuisance for each median stop, and a larger fire', () => {
    const { series } = delayAgainstForkLift({ delay: 10, passes: 12, stop: 3, growthTime: 150 });
    const [nuisance, heat] = series;
    expect((nuisance?.y[3] ?? 0) / (nuisance?.y[0] ?? 1)).toBeCloseTo(0.5, 10);
    expect(heat?.y[60]).toBeGreaterThan(heat?.y[0] ?? Number.POSITIVE_INFINITY);
  });

  it('dirt: after as many days as the threshold holds daily losses, it needs no smoke', () => {
    const { answer, series } = dirtEatingMargin({ threshold: 35, perDay: 0.12, days: 180 });
    expect(answer).toContain('After 359 days'); // ln 0.65 / ln 0.9988
    expect(series[0]?.y[0]).toBeCloseTo(35, 10);
    expect(dirtEatingMargin({ threshold: 20, perDay: 0.6, days: 365 }).answer).toContain('without any smoke');
  });

  it('flank: one dip a day off the peak, two at it', () => {
    const settings = { offset: 0.5, movement: 0.3, threshold: 35 };
    const { series, answer } = flankUnderHotRoof(settings);
    const dips = (y: Float64Array) =>
      y.filter((v, i) => i > 0 && i < y.length - 1 && v > (y[i - 1] ?? v) && v > (y[i + 1] ?? v)).length;
    expect(series.map(({ y }) => dips(y))).toEqual([2, 4]); // two days
    expect(answer).toContain('One dip a day');
    expect(flankUnderHotRoof({ ...settings, offset: 0.1 }).answer).toContain('Two dips a day');
    expect(flankUnderHotRoof({ ...settings, offset: 1, movement: 0.6 }).answer).toContain('the sun alone');
  });

  it('high hall: warm air delays the roof row, and the lower row finds the fire sooner', () => {
    const first = (lesson: Lesson) => lesson.series.map(({ y }) => y.findIndex((value) => value >= 35));
    const [roof = 0, low = 0] = first(highHall({ height: 20, gradient: 0.8, lower: 8, growthTime: 300 }));
    const [still = 0] = first(highHall({ height: 20, gradient: 0, lower: 8, growthTime: 300 }));
    expect(low).toBeLessThan(roof);
    expect(still).toBeLessThan(roof);
  });
});
