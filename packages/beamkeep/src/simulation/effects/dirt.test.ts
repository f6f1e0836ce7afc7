import { describe, expect, it } from 'vitest';
import { day, hour } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { type Dirt, dirt, dirtCourse, dirtPlace } from './dirt.js';

const set = scene(plainScenario({ samples: 28 * 24, intervalSeconds: 3600 }), 1); // four whole weeks from a Monday
const { start } = set.scenario;
const plan: Dirt = {
  effect: 'dirt',
  stream: 'dirt',
  before: 0,
  rate: 0.5,
  workDaysOnly: false,
  bursts: 0,
  uneven: 0,
  cleanings: [],
};
const after = (changes: Partial<Dirt>, days: number) =>
  100 * dirtCourse({ ...plan, ...changes }, dirtPlace(set), start + 400 * day).at(start + days * day);

describe('dirt', () => {
  it('settles at its rate', () => {
    expect(after({}, 20)).toBeCloseTo(10, 6);
    expect(after({ before: 3 }, 20)).toBeCloseTo(13, 6);
    expect(after({ from: start + 10 * day }, 20)).toBeCloseTo(5, 1);
  });

  it('settles on work days only: five sevenths in whole weeks', () => {
    expect(after({ workDaysOnly: true }, 28)).toBeCloseTo((28 * 0.5 * 5) / 7, 6);
  });

  it('levels off below its most', () => {
    expect(after({ most: 8 }, 400)).toBeLessThan(8);
    expect(after({ most: 8 }, 16)).toBeCloseTo(8 * (1 - Math.exp(-1)), 1); // rate times time is most
  });

  it('comes in bursts at the same rate over a long time', () => {
    const year = after({ bursts: 0.9, rate: 0.05 }, 400);
    expect(year).toBeGreaterThan(10);
    expect(year).toBeLessThan(30);
  });

  it('is cleaned off at the instant, but for what is left', () => {
    const time = start + 10 * day + 0.4 * hour;
    const course = dirtCourse(
      { ...plan, cleanings: [{ time, leaves: 0.2, by: 'hand' }] },
      dirtPlace(set),
      start + 30 * day,
    );
    expect(100 * course.at(time - 1)).toBeCloseTo(5, 1);
    expect(100 * course.at(time)).toBeCloseTo(1, 1);
  });

  it('tells when it reaches a share, and that it never does', () => {
    const course = dirtCourse(plan, dirtPlace(set), start + 100 * day);
    expect((course.reaches(0.2, start) - start) / day).toBeCloseTo(40, 0);
    expect(course.reaches(0.9, start)).toBeNaN();
  });

  it('is a loss in decibels', () => {
    const part = dirt(plan, set);
    const last = set.time.length - 1;
    expect(10 ** (-(part.loss?.[last] ?? 0) / 10)).toBeCloseTo(1 - after({}, (28 * 24 - 1) / 24) / 100, 5);
  });
});
