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
});
