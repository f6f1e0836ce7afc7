import type { TradeOff } from 'beamkeep/planning';
import { standardLimits } from 'beamkeep/planning';
import { describe, expect, it } from 'vitest';
import { bandInWords, betterThan, costsAt, fireInShort, tradeOffSentences } from './tradeOffWords.js';

const band = (value: number) => ({ value, early: value - 10, late: value + 20 });
const cost = (seconds: number) => ({ seconds: band(seconds), heat: band(2 * seconds) });
const cell = (count: number) => ({ count, perYear: 2 * count, low: count, high: 4 * count + 3 });
const grid = [
  [cost(40), cost(50)],
  [cost(60), cost(70)],
];
const tradeOff: TradeOff = {
  beam: 'B1',
  thresholds: [30, 80],
  delays: [0, 10],
  current: { threshold: 30, delay: 10 },
  fires: [{ fire: 't-squared, medium: 1055 kW in 300 s, wood', fuel: 'wood', cells: grid, current: cost(50) }],
  nuisance: {
    years: 0.5,
    confidence: 0.95,
    cells: [
      [cell(1), cell(1)],
      [cell(0), cell(0)],
    ],
  },
  frontier: [
    { threshold: 30, delay: 0, seconds: 40, early: 30, late: 60, perYear: 2 },
    { threshold: 80, delay: 0, seconds: 60, early: 50, late: 80, perYear: 0 },
  ],
  limits: standardLimits(12),
  warnings: [],
  assumed: [],
  leftOut: [],
  decides: '',
};

describe('words of a trade-off', () => {
  it('says both costs of the setting of the site', () => {
    const [now = ''] = tradeOffSentences(tradeOff, tradeOff.current, 0);
    expect(now).toMatch(
      /As it is set, 30 % held for 10 s: t-squared, medium, wood: alarm after 50 s \(40 to 70 s\), at 100 kW/,
    );
    expect(now).toMatch(/1 alarm in the log, 2 a year \(1 to 7\)/);
  });

  it('says both costs of what is tried, and every limit that it breaks with its clause', () => {
    const words = tradeOffSentences(tradeOff, { threshold: 80, delay: 10 }, 0).join(' ');
    expect(words).toMatch(/Tried, 80 % held for 10 s: .*alarm after 70 s/);
    expect(words).toMatch(/lie outside: a sudden loss of 6 dB must alarm \(/);
  });

  it('tells of a setting that is no worse in either cost, and of none where there is none', () => {
    expect(betterThan(tradeOff, tradeOff.current)).toMatchObject({ threshold: 30, delay: 0 });
    expect(betterThan(tradeOff, { threshold: 80, delay: 0 })).toBeUndefined();
    expect(betterThan(tradeOff, { threshold: 33, delay: 0 })).toBeUndefined();
    expect(costsAt(tradeOff, { threshold: 33, delay: 0 }).nuisance).toBeUndefined();
  });

  it('never calls a setting better where the log holds what cannot be told from smoke', () => {
    const words = (smokeLike: number) => tradeOffSentences(tradeOff, tradeOff.current, smokeLike).join(' ');
    expect(words(0)).toMatch(/no worse in either cost/);
    expect(words(2)).not.toMatch(/no worse|better/);
    expect(words(2)).toMatch(/2 stretches of this beam cannot be told from smoke.*may have missed a fire/);
  });

  it('says what was not found', () => {
    expect(bandInWords({ value: null, early: null, late: null }, 's')).toBe('not found while watched');
    expect(bandInWords({ value: null, early: 50, late: null }, 's')).toMatch(/50 s at best/);
    expect(bandInWords({ value: 60, early: 50, late: null }, 's')).toBe('60 s (50 s to not at all)');
    expect(fireInShort({ ...(tradeOff.fires[0] as TradeOff['fires'][0]), fire: 'steady, 200 kW, heptane' })).toBe(
      'steady, 200 kW, heptane',
    );
  });
});
