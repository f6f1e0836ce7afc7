import { describe, expect, it } from 'vitest';
import { frontierPlot } from '../drawing/frontierPlot.js';
import { fireCurves } from './detection.js';
import { fireFromWords } from './fireFromWords.js';
import { limitsBroken, standardLimits } from './standardLimits.js';
import type { NuisanceGrid } from './tradeOff.js';
import { tradeOffOf } from './tradeOffOf.js';

const beam = { layout: 'reflective', separation: 60, wavelength: 880, height: 11.7 } as const;
const curves = ['medium:wood', 'fast:polyurethaneFoam'].map((name) =>
  fireCurves(
    beam,
    { ceiling: 12, area: 1800 },
    { nearest: 0, usual: 3.75, farthest: 7.5 },
    {
      fire: fireFromWords(name),
      diameter: 0.5,
      seconds: 300,
    },
  ),
);
const thresholds = [10, 35, 60];
const delays = [0, 10];
const cell = (count: number) => ({ count, perYear: count, low: count / 2, high: 2 * count + 3 });
const nuisance: NuisanceGrid = {
  years: 1,
  confidence: 0.95,
  cells: [
    [cell(40), cell(12)],
    [cell(6), cell(2)],
    [cell(1), cell(0)],
  ],
};
const question = {
  beam: 'B1',
  thresholds,
  delays,
  current: { threshold: 35, delay: 10 },
  faultThreshold: 90,
  curves,
  ceiling: 12,
};

describe('tradeOffOf', () => {
  const weighed = tradeOffOf({ ...question, nuisance });

  it('has both costs of every setting, and of the current one', () => {
    expect(weighed.fires).toHaveLength(2);
    for (const { cells } of weighed.fires) expect(cells.map((row) => row.length)).toEqual([2, 2, 2]);
    expect(weighed.fires[0]?.cells[1]?.[1]).toEqual(weighed.fires[0]?.current);
    expect(weighed.nuisance).toBe(nuisance);
  });

  it('names the fuel and where its figures come from', () => {
    expect(weighed.fires[1]?.fuel).toContain('SFPE Handbook');
  });

  it('has a frontier that begins at the quickest and ends at the quietest', () => {
    expect(weighed.frontier[0]).toMatchObject({ threshold: 10, delay: 0, perYear: 40 });
    expect(weighed.frontier.at(-1)).toMatchObject({ threshold: 60, delay: 10, perYear: 0 });
  });

  it('without a log it tells the fires only', () => {
    const alone = tradeOffOf(question);
    expect(alone.nuisance).toBeNull();
    expect(alone.frontier).toEqual([]);
    expect(frontierPlot(alone)).toContain('No setting has both costs');
  });

  it('survives JSON: what is never found is null', () => {
    const never = tradeOffOf({
      ...question,
      thresholds: [99.999999999],
      delays: [290],
      nuisance: { ...nuisance, cells: [[cell(0)]] },
    });
    expect(never.fires[0]?.cells[0]?.[0]?.seconds.value).toBeNull();
    expect(JSON.parse(JSON.stringify(never)).fires[0].cells[0][0].heat.late).toBeNull();
    expect(never.frontier).toEqual([]);
  });

  it('draws the frontier with the current setting marked', () => {
    const svg = frontierPlot(weighed);
    expect(svg).toContain('now: 35 %, 10 s');
    expect(svg).toContain('<title');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(frontierPlot({ ...weighed, current: { threshold: 33, delay: 10 } })).toContain('which is not on the grid');
  });

  it('always says what it leaves out and who decides', () => {
    expect(weighed.leftOut.join()).toContain('whether one of them was a fire');
    expect(weighed.decides).toContain('licensed people');
  });
});

describe('standardLimits', () => {
  it('EN 54-12 (from memory): 0.4 dB is 8.8 %, 6 dB is 74.9 %, and 30 s', () => {
    const limits = standardLimits(12);
    expect(limits.map(({ of, side, value }) => [of, side, Number(value.toFixed(1))])).toEqual([
      ['threshold', 'least', 8.8],
      ['threshold', 'least', 18.7],
      ['threshold', 'most', 74.9],
      ['threshold', 'most', 90],
      ['delay', 'most', 30],
    ]);
    for (const { clause } of limits) expect(clause).toMatch(/\((read|from memory)\)$/);
  });
  it('names the limits that a setting breaks', () => {
    const broken = (threshold: number, delay: number) =>
      limitsBroken({ threshold, delay }, standardLimits()).map(({ of, side }) => `${of} ${side}`);
    expect(broken(35, 10)).toEqual([]);
    expect(broken(5, 31)).toEqual(['threshold least', 'threshold least', 'delay most']);
    expect(broken(95, 30)).toEqual(['threshold most', 'threshold most']);
  });
  it('BS 5839-1, Table 3 (from memory): above 25 m, 35 % at most', () => {
    expect(standardLimits(30).at(-1)).toMatchObject({ of: 'threshold', side: 'most', value: 35 });
  });
});
