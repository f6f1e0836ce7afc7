import { describe, expect, it } from 'vitest';
import { type Draws, draws } from './draws.js';
import { type Course, firstPassages } from './firstPassage.js';
import type { WeighedLaw } from './laws.js';
import type { ClockedReadings } from './readings.js';
import { evenWeek, type SoilingClock, weekWithRest } from './soilingWeek.js';

/*
 * Laws whose first passage is known in closed form: 2 dB to go at 0.02 dB a day are 100 days. Tolerances of spreads are
 * three standard errors of a quantile of so many futures.
 */

const law: WeighedLaw = {
  shape: { kind: 'steady' },
  wander: 0,
  memory: 15,
  burst: 0,
  noise: 0.01,
  fit: 0,
  state: [0, 0, 0.02],
  covariance: [0, 0, 0, 0, 0, 0],
  scale: 1,
  weight: 1,
};
const course: Course = { level: 2, spread: 0, horizon: 2000, futures: 4000 };
const readingsOf = (ground = 0, at = 0, clock: SoilingClock = evenWeek): ClockedReadings => ({
  days: [{ at, loss: 0, run: 0 }],
  soil: new Float64Array(1),
  ground,
  pilot: 0.02,
  clock,
});
const passages = (changed: Partial<WeighedLaw>, more: Partial<Course> = {}, readings = readingsOf(), seed = 3) =>
  firstPassages([{ ...law, ...changed }], readings, { ...course, ...more }, draws(seed));
const quantile = (times: Float64Array, share: number) => times[Math.floor(share * times.length)] as number;
/** Day that half of the futures reach, and how far one spread of a normal distribution lies to either side. */
const middle = (times: Float64Array) => quantile(times, 0.5);
const spread = (times: Float64Array) => (quantile(times, 0.8413) - quantile(times, 0.1587)) / 2;
const within = (value: number, truth: number, share: number) => {
  expect(value).toBeGreaterThan(truth * (1 - share));
  expect(value).toBeLessThan(truth * (1 + share));
};
/** All futures alike. */
const sure = (changed: Partial<WeighedLaw>, more: Partial<Course> = {}, readings = readingsOf()) => {
  const times = passages(changed, { futures: 20, ...more }, readings);
  expect(times.at(-1)).toBeCloseTo(times[0] as number, 9);
  return times[0] as number;
};

describe('firstPassages where nothing is in doubt', () => {
  it('2 dB at 0.02 dB a day are 100 days; what is lost already counts', () => {
    expect(sure({})).toBeCloseTo(100, 9);
    expect(sure({ state: [0.5, 0, 0.02] })).toBeCloseTo(75, 9);
    expect(sure({ state: [0.5, 0, 0.0013] })).toBeCloseTo(1.5 / 0.0013, 6);
  });
  it('a level that is reached already is reached today, not yesterday', () => {
    expect(sure({ state: [2, 0, 0.02] })).toBe(0);
    expect(sure({ state: [3, 0, 0.02] })).toBe(0);
  });
  it('beyond the horizon it is not reached', () => {
    expect(sure({}, { horizon: 100.5 })).toBeCloseTo(100, 9);
    expect(passages({}, { horizon: 50, futures: 3 })).toEqual(Float64Array.of(...[0, 0, 0].map(() => Infinity)));
  });
  it('dirt does not go by itself: a rate that is drawn below nothing stands still', () =>
    expect(passages({ state: [0, 0, -1] }, { futures: 3 })[0]).toBe(Number.POSITIVE_INFINITY));
  it('a dirtier spell adds to the rate while it is remembered, a cleaner one takes from it and no more than all', () => {
    expect(sure({ state: [0, 0.005, 0.02], memory: 1e9 })).toBeCloseTo(80, 4);
    expect(sure({ state: [0, -0.01, 0.02], memory: 1e9 })).toBeCloseTo(200, 4);
    // 0.01 dB a day, forgotten over 15 days and held through each: 0.01 / (1 - e^(-1/15)) in all.
    expect(sure({ state: [0, 0.01, 0.02] })).toBeCloseTo((2 - 0.01 / (1 - Math.exp(-1 / 15))) / 0.02, 1);
    expect(sure({ state: [0, -0.1, 0.02], memory: 3 })).toBeGreaterThan(100);
    expect(sure({ state: [0, -0.1, 0.02], memory: 3 })).toBeLessThan(110);
  });
  it('derived: of obscuration that grows steadily, 35 % are reached after 0.35 x 10 / ln 10 over the rate', () => {
    const obscured = { shape: { kind: 'obscuration', share: 1 } } as const;
    const level = -10 * Math.log10(0.65);
    expect(Math.abs(sure(obscured, { level }) - (0.35 * 10) / Math.LN10 / 0.02)).toBeLessThan(0.5); // by steps of a day
    expect(Math.abs(sure({ ...obscured, scale: 2 }, { level }) - (0.35 * 20) / Math.LN10 / 0.02)).toBeLessThan(0.5);
  });
  it('what a knock took is no dirt: the shape begins above it', () => {
    const ceiling = { shape: { kind: 'ceiling', at: 1 } } as const;
    expect(sure({ ...ceiling, state: [1.5, 0, 0.02] })).toBe(Number.POSITIVE_INFINITY);
    const above = sure({ ...ceiling, state: [1.5, 0, 0.02] }, {}, readingsOf(1.5));
    expect(Math.abs(above - Math.LN2 / 0.02)).toBeLessThan(0.5); // half way to a ceiling of 1 dB
    expect(sure({ ...ceiling, state: [1.5, 0, 0.02] }, {}, readingsOf(1.8))).toBeLessThan(above); // clean: whole pace
  });
  it('days off do not soil: the week goes on from the last reading', () => {
    const clock = weekWithRest(2, 2);
    const [rest, work] = [0.15, 1].map((day) => day * (7 / 5.3));
    const reached = (from: number) =>
      sure({}, { level: 0.02 * (2 * (rest as number) + (work as number)) }, readingsOf(0, from, clock));
    expect(reached(9)).toBeCloseTo(3, 9); // two days of rest, then one of work
    expect(reached(7)).toBeCloseTo(1 + (2 * (rest as number)) / (work as number), 9);
  });
  it('each law gets its share of futures', () => {
    const laws = [0.25, 0.5, 0.25].map((weight, at) => ({ ...law, state: [0, 0, 0.04 / (at + 1)] as const, weight }));
    const times = firstPassages(laws, readingsOf(), { ...course, futures: 8 }, draws(1));
    expect([...times].map(Math.round)).toEqual([50, 50, 100, 100, 100, 100, 150, 150]);
  });
});

describe('firstPassages where something is in doubt', () => {
  it('the level: 0.1 dB to either side are 5 days', () => {
    const times = passages({}, { spread: 0.1 });
    within(middle(times), 100, 0.005);
    within(spread(times), 5, 0.07);
  });
  it('where the loss stands: likewise', () => {
    const times = passages({ covariance: [0.01, 0, 0, 0, 0, 0] });
    within(middle(times), 100, 0.005);
    within(spread(times), 5, 0.07);
  });
  it('the rate: its quantiles are those of the day, turned about', () => {
    const times = passages({ covariance: [0, 0, 0, 0, 0, 1e-6] });
    within(middle(times), 100, 0.005);
    within(quantile(times, 0.8413), 2 / 0.019, 0.01);
    within(quantile(times, 0.1587), 2 / 0.021, 0.01);
  });
  it('a dirtier spell that may last: likewise', () => {
    const times = passages({ memory: 1e9, covariance: [0, 0, 0, 1e-6, 0, 0] });
    within(quantile(times, 0.8413), 2 / 0.019, 0.01);
    within(quantile(times, 0.1587), 2 / 0.021, 0.01);
  });
  it('doubts that go together add up, doubts that go against each other leave the day as it is', () => {
    const both = (covariance: WeighedLaw['covariance']) => passages({ memory: 1e9, covariance });
    // 0.1 dB of loss and 0.001 dB a day
    within(quantile(both([0.01, 0, 1e-4, 0, 0, 1e-6]), 0.8413), 2.1 / 0.019, 0.01);
    expect(spread(both([0.01, 0, -1e-4, 0, 0, 1e-6]))).toBeLessThan(0.01);
    within(quantile(both([0.01, 1e-4, 0, 1e-6, 0, 0]), 0.8413), 2.1 / 0.019, 0.01);
    expect(spread(both([0.01, -1e-4, 0, 1e-6, 0, 0]))).toBeLessThan(0.01);
    within(quantile(both([0, 0, 0, 1e-6, 1e-6, 1e-6]), 0.8413), 2 / 0.018, 0.01);
    expect(spread(both([0, 0, 0, 1e-6, -1e-6, 1e-6]))).toBeLessThan(0.01);
    // Rate and spell alike, and the loss against both: 2 + 0.2 u at 0.02 + 0.002 u
    expect(spread(both([0.04, -2e-4, -2e-4, 1e-6, 1e-6, 1e-6]))).toBeLessThan(0.01);
    // Half alike: the spread of what is left of the loss, 0.1 x root(3/4) dB, beside what the rate explains
    within(spread(both([0.01, 0, -0.5e-4, 0, 0, 1e-6])), Math.hypot(5 * Math.sqrt(3 / 4), 2.5), 0.07);
    within(spread(both([0.01, -0.5e-4, 0, 1e-6, 0, 0])), Math.hypot(5 * Math.sqrt(3 / 4), 2.5), 0.07);
  });
  it('a rate is above 0: of what may lie below, only the rest is drawn', () => {
    const far = { horizon: 1e5 };
    const half = passages({ state: [0, 0, 0], covariance: [0, 0, 0, 0, 0, 4e-4] }, far);
    within(middle(half), 2 / (0.02 * 0.6745), 0.06); // half of a normal distribution: its middle at 0.6745
    const most = passages({ covariance: [0, 0, 0, 0, 0, 4e-4] }, far);
    within(quantile(most, 0.9), 2 / (0.02 * (1 - 0.6974)), 0.1); // a tenth of the 84.13 % above 0
  });
  it('weeks dirtier than others: 0.2 of the rate, forgotten over 15 days, are 10 days of 100', () => {
    const times = passages({ wander: 0.2, covariance: [0, 0, 0, 0.004 ** 2, 0, 0] });
    within(middle(times), 100, 0.02);
    // Integral of what is forgotten evenly: variance 2 s² (15 T - 15²), less e^(-T/15)
    within(spread(times), Math.sqrt(2 * 0.004 ** 2 * (15 * 100 - 225)) / 0.02, 0.07);
  });
  it('dirt in lumps of a day of growth: the root of 100 days', () => {
    const times = passages({ burst: 1 });
    within(middle(times), 100, 0.02);
    within(spread(times), 10, 0.07);
  });
  it('takes a day at a time where the day is near, a week where it is far', () => {
    const steps = (level: number) => {
      let taken = -4; // of the level and the state
      const drawn = draws(1);
      const normal = () => {
        taken++;
        return drawn.normal();
      };
      const counting: Draws = { ...drawn, normal };
      firstPassages([law], readingsOf(), { ...course, level, futures: 1 }, counting);
      return taken;
    };
    expect(steps(2)).toBe(99);
    expect(steps(8)).toBe(99); // 400 days by 4
    expect(steps(28)).toBe(199); // 1400 days by 7
  });
});
