import { describe, expect, it } from 'vitest';
import { minute } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { course, type Fire, smoke } from './smoke.js';

const set = scene(plainScenario({ samples: 7200, intervalSeconds: 1 }), 1);
const fire: Fire = {
  from: set.scenario.start + 10 * minute,
  law: 'flaming',
  growth: 200,
  doublings: 5,
  peak: 4,
  stays: 600,
  clears: 900,
  dither: 0,
  ditherSeconds: 10,
};

describe('course', () => {
  it('grows with the square of time in flame (Q = alpha t^2)', () => {
    expect(course(fire, 100)).toBe(0.25);
    expect(course(fire, 200)).toBe(1);
  });

  it('doubles again and again when smouldering', () => {
    const slow = { ...fire, law: 'smouldering', growth: 1000 } as const;
    expect(course(slow, 800) - course(slow, 600)).toBeCloseTo(2 * (course(slow, 600) - course(slow, 400)), 9);
  });

  it('joins smouldering and flame without a jump', () => {
    const both = { ...fire, law: 'smouldering-then-flaming' } as const;
    expect(course(both, 139.999)).toBeCloseTo(course(both, 140.001), 3);
    expect(course(both, 199.999)).toBeCloseTo(1, 3);
  });

  it('clears slowly, or hangs', () => {
    expect(course(fire, 800 + 900)).toBeCloseTo(Math.exp(-1), 9);
    expect(course({ ...fire, clears: Number.POSITIVE_INFINITY }, 1e6)).toBe(1);
  });
});

describe('smoke', () => {
  it('takes its full loss at its peak and nothing before', () => {
    const loss = smoke({ effect: 'smoke', stream: 's', fires: [fire] }, set).loss ?? new Float32Array();
    expect(loss[599]).toBe(0);
    expect(loss[600 + 300]).toBeCloseTo(4, 6);
  });

  it('counts a fire that begins in the smoke of another with it, and one that begins as it clears on its own', () => {
    const windows = (...fires: Fire[]) => smoke({ effect: 'smoke', stream: 's', fires }, set).windows;
    const second = (minutes: number): Fire => ({ ...fire, from: fire.from + minutes * minute });
    const [end] = windows(fire).map(({ to }) => to);
    expect(windows(fire, second(12))).toEqual([{ from: fire.from, to: (end as number) + 12 * minute }]);
    const later = second(30);
    expect(windows(fire, later).map(({ from }) => from)).toEqual([fire.from, later.from]);
    expect(windows(fire, later)[0]?.to).toBe(later.from - 1);
  });

  it('dithers about its course', () => {
    const loss =
      smoke({ effect: 'smoke', stream: 's', fires: [{ ...fire, dither: 0.15 }] }, set).loss ?? new Float32Array();
    const held = loss.subarray(850, 1350);
    const mean = held.reduce((sum, value) => sum + value, 0) / held.length;
    expect(mean).toBeGreaterThan(3.5);
    expect(mean).toBeLessThan(4.5);
    expect(Math.max(...held) - Math.min(...held)).toBeGreaterThan(1);
  });
});
