import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { longRunSpread } from '../longRunSpread.js';
import { normalNoise } from '../normalNoise.js';
import { changePoints } from './changePoints.js';

/*
 * What the options of `changePoints` say about drift, simulated: half a year of hourly losses [dB] under dirt, steady or
 * in bursts, with lasting noise, wild hours and holes, and none to four steps of 0.15 dB and more.
 */
const rows = 24 * 180;
const beams = 60;

interface Beam {
  readonly loss: Float64Array;
  readonly steps: readonly number[];
}

function simulated(): Beam[] {
  const generator = xoroshiro128plus(48);
  const chance = () => uniformFloat64(generator);
  const noise = normalNoise(49);
  return Array.from({ length: beams }, () => {
    const [spread, memory, rate, bursts] = [
      0.01 + 0.04 * chance(),
      0.5 + 0.45 * chance(),
      0.03 * chance(),
      chance() < 0.5,
    ];
    const steps = Array.from({ length: Math.floor(5 * chance()) }, () => 100 + Math.floor((rows - 200) * chance()));
    const sizes = steps.map(() => (chance() < 0.5 ? -1 : 1) * (0.15 + 1.5 * chance()));
    let [kept, dirt] = [0, 0];
    const loss = Float64Array.from({ length: rows }, (_, row) => {
      kept = memory * kept + spread * Math.sqrt(1 - memory ** 2) * noise();
      dirt += bursts ? (chance() < 0.02 ? (rate / 24 / 0.02) * 2 * chance() : 0) : rate / 24;
      const stepped = sizes.reduce((sum, size, k) => (row >= (steps[k] as number) ? sum + size : sum), 0);
      const wild = chance() < 0.01 ? 1 + 5 * chance() : 0;
      return chance() < 0.02 ? Number.NaN : dirt + kept + 0.3 * spread * noise() + stepped + wild;
    });
    return { loss, steps };
  });
}

/** Share of the steps found within two rows, and false steps a beam, at a drift in long-run spreads a day. */
function outcome(fleet: readonly Beam[], perDay: number): { found: number; false: number } {
  let [hits, steps, false_] = [0, 0, 0];
  for (const beam of fleet) {
    const scale = longRunSpread(beam.loss, 24);
    const found = new Set(
      changePoints(beam.loss, { scale, penalty: 3 * Math.log(rows), drift: (perDay * scale) / 24 }),
    );
    for (const step of beam.steps) {
      const hit = [...found].find((row) => Math.abs(row - step) <= 2);
      if (hit !== undefined) hits++;
      found.delete(hit ?? -1);
    }
    steps += beam.steps.length;
    false_ += found.size;
  }
  return { found: hits / steps, false: false_ / fleet.length };
}

describe('changePoints with drift', () => {
  const fleet = simulated();
  it('half the long-run spread a day: nearly all steps, few false ones', () => {
    const { found, false: wrong } = outcome(fleet, 0.5);
    expect(found).toBeGreaterThanOrEqual(0.9);
    expect(wrong).toBeLessThanOrEqual(1);
  });
  it('the whole of it: hardly a false one', () => {
    const { found, false: wrong } = outcome(fleet, 1);
    expect(found).toBeGreaterThanOrEqual(0.85);
    expect(wrong).toBeLessThanOrEqual(0.15);
  });
  it('none: dirt is cut into stairs', () => expect(outcome(fleet, 0).false).toBeGreaterThan(5));
});
