import { describe, expect, it } from 'vitest';
import { plainScenario } from './plainScenario.js';
import { plainRecording } from './recording/recording.js';
import { scene } from './scene.js';

describe('scene', () => {
  it('looks every interval, to the millisecond, without jitter', () => {
    const { time } = scene(
      plainScenario({ samples: 1000, intervalSeconds: 0.02, recording: { ...plainRecording, tick: 1 } }),
      1,
    );
    expect((time[999] ?? 0) - (time[0] ?? 0)).toBe(999 * 20);
  });

  it('rises strictly however much it jitters', () => {
    const { time } = scene(
      plainScenario({ samples: 5000, intervalSeconds: 1, recording: { ...plainRecording, jitter: 0.3, tick: 1 } }),
      1,
    );
    for (let i = 1; i < time.length; i++) expect(time[i]).toBeGreaterThan(time[i - 1] ?? 0);
  });

  it('has a past before the log, so that walls start warm', () => {
    const set = scene(plainScenario(), 1);
    expect(set.structure.start).toBeLessThan(set.time[0] ?? 0);
  });
});
