import { describe, expect, it } from 'vitest';
import { random } from '../../simulation/index.js';
import { coveredTest } from './coveredTest.js';
import { coveredWords } from './coveredWords.js';
import type { TestReadings } from './testStretches.js';

const beam = {
  id: 'B1',
  signalUnit: 'percent',
  coveredSubtracted: false,
  alarmThreshold: 35,
  faultThreshold: 90,
} as const;

const start = Date.parse('2027-01-20T10:00:00Z');

/** A test at one sample a second, as "seconds:level" [% of clean air], the hand on its way for two seconds. */
function logged(plan: string, spread = 0.2, step = 0, seed = 4): TestReadings {
  const parts = plan.split(' ').map((part) => part.split(':').map(Number) as [number, number]);
  const chance = random(seed, 'covered');
  const levels = parts.flatMap(([seconds, level], part) => {
    const before = parts[part - 1]?.[1] ?? level;
    return Array.from({ length: seconds }, (_, s) =>
      s < 2 && part > 0 ? before + ((level - before) * (s + 1)) / 3 : level,
    );
  });
  const round = (value: number) => (step === 0 ? value : Math.round(value / step) * step);
  return {
    time: Float64Array.from(levels, (_, s) => start + 1000 * s),
    power: Float64Array.from(levels, (level) => round(level + spread * chance.normal())),
    step,
  };
}

describe('coveredTest', () => {
  it('finds clean, covered, clean, and their ratio', () => {
    const test = coveredTest(logged('60:100 40:4 60:100.1'), beam);
    expect(test.ratio).toBeCloseTo(0.04, 3);
    expect(test.ratioLow).toBeLessThan(0.04);
    expect(test.ratioHigh).toBeGreaterThan(0.04);
    expect(test.ratioHigh - test.ratioLow).toBeLessThan(0.004);
    expect(test.largestObscuration).toBeCloseTo(96, 1);
    expect(test.covered.start).toBeGreaterThanOrEqual(start + 62_000);
    expect(test.covered.end).toBeLessThan(start + 100_000);
    expect(test.before?.end).toBeLessThan(start + 60_000);
    expect(test.after?.start).toBeGreaterThanOrEqual(start + 102_000);
    expect(coveredWords(test, beam)).toMatchObject({ verdict: 'fit', actions: [] });
  });
  it('refuses a beam with a residue of half its light in plain words', () => {
    const test = coveredTest(logged('60:100 40:50 60:100'), beam);
    const { verdict, sentences, actions } = coveredWords(test, beam);
    expect(verdict).toBe('refuse');
    expect(sentences[0]).toMatch(
      /35 % and needs (70|69\.9\d*|70\.\d) % of true obscuration: 5\.2\d* dB instead of 1\.87 dB, 2\.8 times/,
    );
    expect(sentences[1]).toContain('A blocked beam will not be told as a fault');
    expect(actions[0]).toContain('window');
  });
  it('refuses a beam that can never read its threshold', () => {
    const test = coveredTest(logged('60:100 40:70 60:100'), beam);
    expect(test.alarm.reachable).toBe('no');
    expect(coveredWords(test, beam).sentences[0]).toMatch(/No smoke can raise the alarm.* never read more than 30/);
  });
  it('the same residue is no bar to equipment that takes it off', () => {
    const subtracts = { ...beam, coveredSubtracted: true };
    const test = coveredTest(logged('60:100 40:50 60:100'), subtracts);
    expect(test.largestObscuration).toBe(100);
    expect(coveredWords(test, subtracts).verdict).toBe('fit');
    expect(coveredWords(test, subtracts).sentences[0]).toContain('takes that off');
  });
  it('tells a clean reading that did not come back', () => {
    const test = coveredTest(logged('60:100 40:1 60:93'), beam);
    expect(test.drift?.percent).toBeCloseTo(-7.25, 1);
    expect(test.drift?.tells).toBe(true);
    expect(coveredWords(test, beam).sentences.at(-1)).toMatch(/fell by 7\.\d+ %/);
    expect(test.ratio).toBeCloseTo(1 / 96.5, 3);
  });
  it('does not call a drift what is within the noise or below 2 %', () => {
    expect(coveredTest(logged('60:100 40:1 60:99'), beam).drift?.tells).toBe(false);
    expect(coveredTest(logged('10:100 10:1 10:97', 6), beam).drift?.tells).toBe(false);
  });
  it('knows a ratio no better than the step of a rounded scale', () => {
    const test = coveredTest(logged('60:100 40:0.4 60:100', 0, 0.5), beam);
    expect(test.step).toBeCloseTo(0.005, 6);
    expect(test.ratioHigh - test.ratioLow).toBeGreaterThan(0.004);
  });
  it('takes one clean stretch where the log has no other, and says so', () => {
    const test = coveredTest(logged('60:100 40:2'), beam);
    expect(test.after).toBeUndefined();
    expect(test.drift).toBeUndefined();
    expect(coveredWords(test, beam).actions[0]).toContain('both sides');
  });
  it('finds the full cover among half covers', () => {
    const test = coveredTest(logged('60:100 30:60 40:3 30:60 60:100'), beam);
    expect(test.ratio).toBeCloseTo(0.03, 3);
    expect(test.before?.share).toBeCloseTo(1, 2);
  });
  it.each([
    ['never covered', logged('200:100')],
    ['covered by less than the noise', logged('60:100 40:99.7 60:100')],
  ])('refuses a log that was %s', (_, readings) =>
    expect(() => coveredTest(readings, beam)).toThrow(/beam B1: nothing was covered/),
  );
  it('refuses an empty log and one that begins and ends covered', () => {
    expect(() => coveredTest({ time: new Float64Array(0), power: new Float64Array(0) }, beam)).toThrow(
      'at least 3 samples',
    );
    expect(() => coveredTest(logged('4:100 1:80', 0), beam)).toThrow('beam B1');
  });
  it('any unit of power gives the same ratio', () => {
    const { time, power } = logged('60:100 40:4 60:100');
    const counts = coveredTest({ time, power: power.map((value) => 32 * value) }, { ...beam, signalUnit: 'counts' });
    const plain = coveredTest({ time, power }, beam);
    expect(counts.ratio).toBeCloseTo(plain.ratio, 12);
    expect(counts.covered.reading).toBeCloseTo(32 * plain.covered.reading, 10);
  });
  it('two clean stretches know the clean reading better than one: their joint error is halved', () => {
    // 48 samples of spread 1 a side: 0.14 each, 0.10 of their middle, 0.05 of a ratio of a half; covered 1/40.
    const { ratioLow, ratioHigh, covered } = coveredTest(logged('60:100 2000:50 60:100', 1), beam);
    expect((ratioHigh - ratioLow) / 2).toBeGreaterThan(0.0008);
    expect((ratioHigh - ratioLow) / 2).toBeLessThan(0.0018);
    expect(covered.spread).toBeCloseTo(0.01, 3);
  });
  it('a clean reading that moved lies evenly between before and after: it is off by the move over the root of 12 (JCGM 100:2008, 4.3.7)', () => {
    const { ratio, ratioLow, ratioHigh } = coveredTest(logged('60:100 40:50 60:96', 0), beam);
    expect(ratio).toBeCloseTo(50 / 98, 12);
    const reach = (ratioHigh - ratioLow) / 2;
    expect(ratioHigh - ratio).toBeCloseTo(reach, 12);
    const expected = (ratio * 4) / 98 / Math.sqrt(12);
    expect(reach / expected).toBeCloseTo(1.96, 3); // without noise nothing else is in doubt
  });
  it('tells a clean reading that rose', () => {
    const { drift } = coveredTest(logged('60:100 40:1 60:104'), beam);
    expect(drift).toMatchObject({ percent: expect.closeTo(400 / 102, 0), tells: true });
    expect(drift?.low).toBeGreaterThan(3);
    expect(drift?.high).toBeLessThan(5);
  });
  it('limits of 95 % of the drift hold the truth about so often, and tell of none where there is none', () => {
    const drifts = Array.from({ length: 200 }, (_, seed) =>
      coveredTest(logged('20:100 20:4 20:100', 2, 0, seed), beam),
    ).map(({ drift }) => drift);
    const holding = drifts.filter((drift) => drift && drift.low <= 0 && drift.high >= 0).length;
    expect(holding / drifts.length).toBeGreaterThanOrEqual(0.92); // 0.95 less two spreads of a count
    expect(holding / drifts.length).toBeLessThan(1);
  });
  it('tells of no drift that its own limits take for none, however large', () => {
    const drifts = Array.from(
      { length: 40 },
      (_, seed) => coveredTest(logged('12:100 12:1 12:100', 6, 0, seed), beam).drift,
    ).filter((drift) => drift && drift.low <= 0 && drift.high >= 0);
    expect(drifts.some((drift) => Math.abs(drift?.percent ?? 0) > 2)).toBe(true);
    expect(drifts.filter((drift) => drift?.tells)).toEqual([]);
  });
  it('the least that can be read goes by the upper limit of the ratio', () => {
    const test = coveredTest(logged('60:100 40:20 60:100', 1), beam);
    expect(test.largestObscuration).toBeCloseTo(100 * (1 - test.ratio), 10);
    expect(test.largestObscurationLow).toBeCloseTo(100 * (1 - test.ratioHigh), 10);
    expect(test.largestObscurationLow).toBeLessThan(test.largestObscuration);
  });
  it('noise that reads less than no light lets nothing be read beyond all', () => {
    const test = coveredTest(logged('60:100 40:-0.3 60:100'), beam);
    expect(test.ratio).toBeLessThan(0);
    expect(test.largestObscuration).toBe(100);
  });
  it('a threshold within the limits of the measurement is doubtful', () =>
    expect(coveredTest(logged('60:100 40:65 60:100', 1), beam).alarm).toMatchObject({
      threshold: 35,
      reachable: 'doubtful',
      verdict: 'refuse',
    }));
  it('judges the alarm by how much smoke it needs, the fault by darkness alone', () => {
    const { alarm, fault } = coveredTest(logged('60:100 40:9 60:100'), beam); // never more than 91 %
    expect(alarm).toMatchObject({ threshold: 35, reachable: 'yes', verdict: 'caution' });
    expect(fault).toMatchObject({ threshold: 90, reachable: 'yes', verdict: 'fit' });
  });
  it('its stretches are of as many samples as lie between their ends, and shares of the clean reading', () => {
    const test = coveredTest(logged('60:80 40:8 60:80.2'), beam);
    for (const stretch of [test.before, test.covered, test.after]) {
      expect(stretch?.samples).toBe(((stretch?.end ?? Number.NaN) - (stretch?.start ?? Number.NaN)) / 1000 + 1);
      expect((stretch?.share ?? Number.NaN) * test.clean).toBeCloseTo(stretch?.reading ?? Number.NaN, 10);
    }
    expect(test.clean).toBeCloseTo(80.1, 1);
    expect(test.before?.reading).toBeCloseTo(80, 0);
    expect((test.before?.spread ?? Number.NaN) * test.clean).toBeCloseTo(0.2, 1);
  });
  it.each(['60:100 40:4', '40:4 60:100'])('of one clean stretch the clean reading is its own: %s', (plan) => {
    const test = coveredTest(logged(plan), beam);
    expect(test.clean).toBeCloseTo(100, 1);
    expect(test.ratio).toBeCloseTo(0.04, 3);
    expect([test.before, test.after].filter((stretch) => stretch !== undefined)).toHaveLength(1);
  });
  it('limits of 95 % hold the truth about so often', () => {
    const tests = Array.from({ length: 300 }, (_, seed) =>
      coveredTest(logged('20:100 20:4 20:100', 0.5, 0, seed), beam),
    );
    const holding = tests.filter(({ ratioLow, ratioHigh }) => ratioLow <= 0.04 && 0.04 <= ratioHigh).length;
    // Binomial, 300 trials: 0.95 give or take 0.025 at two spreads; being too careful is no fault.
    expect(holding / tests.length).toBeGreaterThanOrEqual(0.925);
  });
});
