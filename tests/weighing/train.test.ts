import { describe, expect, it } from 'vitest';
import { claimedLog } from '../../packages/beamkeep/scripts/weighing/claimedLog.js';
import { type Example, fitLines } from '../../packages/beamkeep/scripts/weighing/fitLines.js';
import { reliabilityPlot } from '../../packages/beamkeep/scripts/weighing/reliabilityPlot.js';
import { weightsText } from '../../packages/beamkeep/scripts/weighing/weightsText.js';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/index.js';
import { nobody } from '../../packages/beamkeep/src/diagnosis/weighing/beside.js';
import { logOdds, probability } from '../../packages/beamkeep/src/diagnosis/weighing/weighing.js';
import { random } from '../../packages/beamkeep/src/simulation/index.js';

/** Examples of one cause whose log-odds follow a line exactly as often as it says, but for chance. */
function drawn(offset: number, slope: number, count: number): Example[] {
  const draw = random(5, 'examples');
  return Array.from({ length: count }, (_, k) => {
    const score = draw.between(0.05, 0.95);
    const right = draw.chance(probability(offset + slope * logOdds(score)));
    return { cause: 'vibration', beam: String(k), score, alike: 1, beside: nobody, right, weight: 1 };
  });
}

describe('fitLines', () => {
  it('finds the line that the examples were drawn from', () => {
    const { vibration } = fitLines(drawn(-0.8, 0.6, 20_000));
    expect(Math.abs(vibration.offset + 0.8)).toBeLessThan(0.1); // two and more spreads of 20 000 draws
    expect(Math.abs(vibration.slope - 0.6)).toBeLessThan(0.1);
  });
  it('leaves scores as they are where nothing was learned', () => {
    for (const cause of causeWords)
      expect(fitLines([])[cause]).toEqual({ offset: 0, slope: 1, crowd: 0, shared: 0, alone: 0, beams: 0 });
  });
  it('a cause without examples takes the common line', () => {
    const lines = fitLines(drawn(-0.8, 0.6, 20_000));
    expect(Math.abs(lines.condensation.offset + 0.8)).toBeLessThan(0.1);
    expect(lines.condensation.beams).toBe(0);
  });
  it('learns of crowds from the cause whose crowds are wrong, and from no other', () => {
    const crowded = drawn(0, 1, 2000).map((one) => ({ ...one, alike: 30, right: false }));
    const lines = fitLines([...drawn(0, 1, 2000), ...crowded]);
    expect(lines.vibration.crowd).toBeLessThan(-1);
    expect(lines['data-gap'].crowd).toBe(0);
  });
  it('learns of other beams from the cause that they show as well, and from no other', () => {
    const beside = (shared: number) => ({ shared, alone: 1 - shared });
    const together = drawn(2, 1, 2000).map((one) => ({ ...one, beside: beside(1) }));
    const alone = drawn(-2, 1, 2000).map((one) => ({ ...one, beside: beside(0) }));
    const lines = fitLines([...drawn(0, 1, 2000), ...together, ...alone]);
    expect(lines.vibration.shared).toBeGreaterThan(1.5);
    expect(lines.vibration.alone).toBeLessThan(-1.5);
    expect(lines['data-gap']).toMatchObject({ shared: 0, alone: 0 });
  });
  it('makes nothing surer where other beams may only doubt', () => {
    const doubted = drawn(-2, 1, 2000).map((one) => ({ ...one, beside: { shared: 0, alone: 1 } }));
    const examples = [...drawn(0, 1, 2000), ...doubted];
    const { alone, ...rest } = fitLines(examples).vibration;
    const { alone: _, ...unasked } = fitLines(examples.map((one) => ({ ...one, beside: nobody }))).vibration;
    expect(alone).toBeLessThan(-0.5);
    for (const number of ['offset', 'slope', 'crowd', 'shared'] as const)
      expect(rest[number]).toBeCloseTo(unasked[number], 1);
    expect(rest.offset).toBeLessThan(-0.5);
  });
  it('smoke that no other beam shows is no less smoke', () => {
    const alone = drawn(-2, 1, 500).map((one) => ({
      ...one,
      cause: 'smoke-like' as const,
      beside: { shared: 0, alone: 1 },
    }));
    expect(fitLines(alone)['smoke-like'].alone).toBe(0);
  });
  it('smoke that comes again and again is no less smoke', () => {
    const crowded = drawn(0, 1, 500).map((one) => ({ ...one, cause: 'smoke-like' as const, alike: 30, right: false }));
    expect(fitLines(crowded)['smoke-like'].crowd).toBe(0);
  });
  it('never turns the order of scores round', () => {
    for (const { slope } of Object.values(fitLines(drawn(0, -2, 2000)))) expect(slope).toBeGreaterThan(0);
  });
});

describe('training', () => {
  it('gives the same bytes from the same seed', async () => {
    const origin = { ranges: 'weighing', seed: 3, logs: 4 } as const;
    const trained = async (): Promise<string> => {
      const logs = [];
      for (let k = 1; k <= origin.logs; k++)
        logs.push(await claimedLog(origin.seed, k, { ranges: origin.ranges, budget: 4000 }));
      return weightsText(logs, origin);
    };
    const first = await trained();
    expect(await trained()).toBe(first);
    expect(Object.keys(JSON.parse(first).causes)).toEqual([...causeWords]);
  });
});

describe('reliabilityPlot', () => {
  it('draws a circle a bin and says how many findings it holds', () => {
    const bins = [
      { confidence: 0.25, right: 0.2, n: 10 },
      { confidence: 0.95, right: 0.9, n: 90 },
    ];
    const picture = reliabilityPlot(bins, bins);
    expect(picture.match(/<circle/g)).toHaveLength(6); // two a bin, two in the key
    expect(picture).toContain('n 100');
  });
});
