import { describe, expect, it } from 'vitest';
import { beamLight } from '../beamLight.js';
import { plainScenario } from '../plainScenario.js';
import { plainRecording } from '../recording/recording.js';
import { scene } from '../scene.js';

/** Power at a frequency, by the plain sum. */
function power(values: Float64Array, seconds: number, hertz: number): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  let [re, im] = [0, 0];
  for (let i = 0; i < values.length; i++) {
    const phase = 2 * Math.PI * hertz * i * seconds;
    re += ((values[i] ?? 0) - mean) * Math.cos(phase);
    im += ((values[i] ?? 0) - mean) * Math.sin(phase);
  }
  return (re * re + im * im) / values.length ** 2;
}

describe('vibration', () => {
  const level = (offset: number, interval: number) => {
    const plan = plainScenario(
      { samples: 3000, intervalSeconds: interval, recording: { ...plainRecording, tick: 1 } },
      {
        offset: [offset, 0],
        effects: [
          {
            effect: 'vibration',
            stream: 'press',
            frequency: 3,
            turn: [0.1, 0],
            wander: 0,
            runs: [{ from: Date.UTC(2027, 0, 4), to: Date.UTC(2027, 0, 9) }],
            duty: 1,
          },
        ],
      },
    );
    const set = scene(plan, 1);
    const [beam] = plan.beams;
    if (!beam) throw new Error('no beam');
    return beamLight(beam, set).level;
  };

  it('shows at its own frequency on the flank of the lobe', () => {
    const flank = level(0.6, 0.02);
    expect(power(flank, 0.02, 3)).toBeGreaterThan(20 * power(flank, 0.02, 6));
  });

  it('shows at twice its frequency on the peak', () => {
    const centred = level(0, 0.02);
    expect(power(centred, 0.02, 6)).toBeGreaterThan(20 * power(centred, 0.02, 3));
  });

  it('shows at its alias when sampled slowly: 3 Hz at 0.4 s is 0.5 Hz', () => {
    const slow = level(0.6, 0.4);
    expect(power(slow, 0.4, 0.5)).toBeGreaterThan(20 * power(slow, 0.4, 0.9));
  });
});
