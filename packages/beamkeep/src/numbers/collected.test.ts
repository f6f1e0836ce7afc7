import { readFile } from 'node:fs/promises';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { numbersJson, numbersPage } from '../../scripts/numbersPage.js';
import { collected } from './collected.js';
import type { Sourced } from './index.js';
import * as index from './index.js';

describe('the table of constants', () => {
  it('does not compile without a source, or with a source of less than two words', () => {
    expectTypeOf<{ value: number; unit: string; seen: 'read' }>().not.toExtend<Sourced>();
    expectTypeOf<{ value: number; unit: string; seen: 'read'; source: '' }>().not.toExtend<Sourced>();
    expectTypeOf<{ value: number; unit: string; seen: 'derived'; source: 'memory' }>().not.toExtend<Sourced>();
    expectTypeOf<{ value: number; unit: string; source: 'EN 54-12, 4.8' }>().not.toExtend<Sourced>();
    expectTypeOf<{
      value: number;
      unit: string;
      seen: 'common practice';
      source: 'a rumour';
    }>().not.toExtend<Sourced>();
    expectTypeOf(index.flamingExtinction).toExtend<Sourced>();
  });

  it.each(collected.map(({ name, figure }) => [name, figure] as const))('%s says unit and source', (_, figure) => {
    expect(figure.unit.trim()).not.toBe('');
    expect(figure.source).toMatch(/\S+\s+\S+/);
    expect(Number.isFinite(figure.value)).toBe(true);
    expect(figure.seen === 'common practice').toBe(figure.source === 'common practice, no source');
    if (figure.spread !== undefined) expect(figure.spread).toBeGreaterThan(0);
    if (figure.range !== undefined) {
      expect(figure.value).toBeGreaterThanOrEqual(figure.range[0]);
      expect(figure.value).toBeLessThanOrEqual(figure.range[1]);
    }
  });

  it('is complete: what the room exports, the page lists', () => {
    const listed = new Set(collected.map(({ name }) => name.split('.')[0]));
    expect(Object.keys(index).filter((name) => !listed.has(name))).toEqual([]);
    expect([...listed].filter((name) => !(name !== undefined && name in index))).toEqual([]);
  });

  it('gives no name twice', () => {
    const names = collected.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('holds derived entries to their formulas', () => {
    expect(index.halfPowerLoss.value).toBe(10 * Math.log10(2));
    expect(index.gaussianHalfWidth.value).toBeCloseTo(Math.sqrt(Math.LN2 / 2), 15);
    expect(index.infraredShare.value).toBe(index.laboratoryWavelength.value / index.usualWavelength.value);
    expect(index.roofTemperature.aboveByDay.value).toBe(80 / 1.8);
    expect(index.roofTemperature.belowByNight.value).toBe(20 / 1.8);
    expect(index.roundingSpread.value).toBeCloseTo(1 / Math.sqrt(12), 15);
    expect(index.nfpa72.betweenBeams.value).toBeCloseTo(60 * index.foot.value, 12);
  });

  it('NFPA 92B, 2000, A.3.4: 1300 in degF, Btu/s and ft is 96.2 in K, kW and m', () => {
    const inSi = (1300 / 1.8) * 1.055056 ** (-2 / 3) * 0.3048 ** (5 / 3);
    expect(Math.abs(inSi - index.stratification.value)).toBeLessThanOrEqual(0.05);
  });
});

describe('docs/numbers.md and numbers.json', () => {
  it('is what the table says; if not: node packages/beamkeep/scripts/writeNumbersPage.mjs', async () => {
    const page = await readFile(new URL('../../docs/numbers.md', import.meta.url), 'utf8');
    expect(page).toBe(numbersPage());
    expect(await readFile(new URL('../../docs/numbers.json', import.meta.url), 'utf8')).toBe(numbersJson());
  });
});
