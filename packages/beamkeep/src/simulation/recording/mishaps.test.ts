import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { mishaps } from './mishaps.js';
import { plainRecording } from './recording.js';

describe('mishaps', () => {
  it('befall nothing with a good logger', () => {
    const { gone, doubled, late } = mishaps(scene(plainScenario({ samples: 500 }), 1));
    expect([...gone, ...doubled, ...late].every((value) => value === 0)).toBe(true);
  });

  it('spare the first line, and count a broken line as gone', () => {
    const recording = { ...plainRecording, broken: 0.5 };
    const { gone, broken } = mishaps(scene(plainScenario({ samples: 500, recording }), 1));
    expect(gone[0]).toBe(0);
    expect(broken).toEqual(gone);
    expect(broken.filter((value) => value === 1).length).toBeGreaterThan(200);
  });
});
