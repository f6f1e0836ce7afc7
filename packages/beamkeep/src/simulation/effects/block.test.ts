import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { plainRecording } from '../recording/recording.js';
import { scene } from '../scene.js';
import { block } from './block.js';

const set = scene(plainScenario({ samples: 600, intervalSeconds: 0.1, recording: { ...plainRecording, tick: 1 } }), 1);
const { start } = set.scenario;

describe('block', () => {
  const standings = [{ from: start + 10_000, to: start + 30_000, covers: 0.75, edge: 2 }];
  const loss = block({ effect: 'block', stream: 'lift', standings, restless: 0 }, set).loss ?? new Float32Array();
  const through = (seconds: number) => 10 ** (-(loss[seconds * 10] ?? 0) / 10);

  it('is flat at what it covers', () => {
    for (let seconds = 13; seconds < 28; seconds++) expect(through(seconds)).toBeCloseTo(0.25, 6);
  });

  it('comes and goes within its edges', () => {
    expect(through(9)).toBe(1);
    expect(through(11)).toBeCloseTo(1 - 0.75 / 2, 2);
    expect(through(31)).toBe(1);
  });

  it.each([0, 2])('where a sample is a mean, stands for its share of the interval, with edges of %f s', (edge) => {
    const means = scene(
      plainScenario({ samples: 12, intervalSeconds: 10, recording: { ...plainRecording, sampling: 'mean' } }),
      1,
    );
    const first = means.scenario.start;
    const stands = [{ from: first + 14_000, to: first + 53_000, covers: 0.8, edge }];
    const over = block({ effect: 'block', stream: 'lift', standings: stands, restless: 0 }, means).loss ?? [];
    const taken = Array.from(over, (loss) => (1 - 10 ** (-loss / 10)) / 0.8);
    const late = edge / 2 / 10;
    const shares = [0, 0, 0.6 - late, 1, 1, 1, 0.3 - late, 0];
    for (const [i, share] of shares.entries()) expect(taken[i]).toBeCloseTo(share, 5);
  });
});
