import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { lamp } from './lamp.js';

const set = scene(
  plainScenario({
    start: Date.UTC(2027, 1, 1),
    samples: 90 * 288,
    intervalSeconds: 300,
    climate: { ...plainScenario().climate, cloud: 0.1 },
  }),
  6,
);

describe('lamp', () => {
  it('burns while people work, in the dark only when asked', () => {
    const plan = { effect: 'lamp', stream: 'lamps', adds: 0.05, rough: 0, darkOnly: false } as const;
    const lit = (darkOnly: boolean) =>
      (lamp({ ...plan, darkOnly }, set).light ?? []).filter((value) => value > 0.02).length;
    expect(lit(false)).toBeGreaterThan(lit(true));
    expect(lit(true)).toBeGreaterThan(0);
  });
});
