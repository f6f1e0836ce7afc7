import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { simulateLog } from './simulateLog.js';

const usual = { seed: 7, days: 30, intervalSeconds: 600, beams: 2, causes: ['contamination', 'condensation'] } as const;

describe('simulateLog', () => {
  it('gives a log, its site and its truth, the same again from the same seed', () => {
    const [a, b] = [simulateLog(usual), simulateLog(usual)];
    expect([...a.lines]).toEqual([...b.lines]);
    expect([...a.lines].length).toBe(1 + 30 * 144);
    expect(parseSite(JSON.stringify(a.site)).beams.length).toBe(2);
    const { beams } = a.truth('log.csv', 'site.json');
    expect(beams.map(({ id }) => id)).toEqual(['B1', 'B2']);
  });

  it('can be read twice', () => {
    const { lines } = simulateLog(usual);
    expect([...lines].length).toBe([...lines].length);
  });

  it('says what must change', () => {
    expect(() => simulateLog({ ...usual, causes: ['rust'] })).toThrow('"rust" is not a cause: use contamination');
    expect(() => simulateLog({ ...usual, days: 2 })).toThrow('contamination needs 4 days to show, the log has 2');
    expect(() => simulateLog({ ...usual, beams: 0 })).toThrow('beams is 0: must be 1 to 16');
    expect(() => simulateLog({ ...usual, intervalSeconds: 0.01 })).toThrow(
      'fewer days, fewer beams or a longer interval',
    );
    expect(() => simulateLog({ ...usual, seed: 1.5 })).toThrow('whole numbers');
  });
});
