import { describe, expect, it } from 'vitest';
import { compensationRatio, lightEmittingSign } from '../numbers/index.js';
import { converted } from './converted.js';
import { apparentObscuration, readingToLevel } from './covered.js';
import { deciview } from './deciview.js';
import { lossAlong } from './lossAlong.js';
import { obscuration } from './obscuration.js';
import { overPath } from './overPath.js';
import published from './published.json' with { type: 'json' };
import { decibelsToPercent, levelToDecibels, levelToPercent, percentToDecibels } from './reading.js';
import { sootToExtinction } from './soot.js';
import { unitNamed } from './unit.js';
import { opticalRange, visibility, visualRange, visualRangeToExtinction } from './visibility.js';

/*
 * Cases published elsewhere, one line of published.json each: inputs, the answer expected, its tolerance (the last
 * digit printed, or rounding where only the formula is published) and the source, which stands in the test's name.
 */

type Answer = number | Readonly<Record<string, number>>;
type Solver = (inputs: Inputs) => Answer;

class Inputs {
  constructor(private readonly values: Readonly<Record<string, unknown>>) {}
  number(name: string): number {
    const value = this.values[name];
    if (typeof value !== 'number') throw new Error(`the case has no number ${name}`);
    return value;
  }
  text(name: string): string {
    const value = this.values[name];
    if (typeof value !== 'string') throw new Error(`the case has no text ${name}`);
    return value;
  }
  list(name: string): readonly unknown[] {
    const value = this.values[name];
    if (!Array.isArray(value)) throw new Error(`the case has no list ${name}`);
    return value;
  }
}

const handbookLn10 = Number('2.303'); // ln 10 as the handbooks print it in their worked values
const crossingsOf = (inputs: Inputs): 1 | 2 => (inputs.number('crossings') === 2 ? 2 : 1);
const squareFootPerPound = 0.3048 ** 2 / 0.45359237; // in m2/kg
const poundPerCubicFoot = 0.45359237 / 0.3048 ** 3; // in kg/m3

const solvers: Readonly<Record<string, Solver>> = {
  conversion: (i) =>
    converted(
      i.number('value'),
      unitNamed(i.text('from'), 'from'),
      unitNamed(i.text('to'), 'to'),
      i.number('pathMetres'),
    ),
  'soot-to-obscuration': (i) => {
    const extinctionPerMetre = sootToExtinction(
      i.number('sootMilligramPerCubicMetre') * 1e-6,
      i.number('massSpecificExtinctionSquareMetrePerKilogram'),
    );
    return {
      extinctionPerMetre,
      opticalDensityPerMetre: converted(extinctionPerMetre, 'extinction-per-metre', 'optical-density-per-metre'),
      percentPerMetre: converted(extinctionPerMetre, 'extinction-per-metre', 'percent-per-metre'),
      percent: obscuration(extinctionPerMetre, i.number('pathMetres')),
    };
  },
  'opacity-path-correction': (i) =>
    overPath(i.number('measuredPercent'), i.number('measuredPathMetres'), i.number('standardPathMetres')),
  'non-uniform-smoke': (i) => {
    const stretches = i.list('segments').map((segment) => {
      const values = new Inputs({ ...(segment as object) });
      return { extinctionPerMetre: values.number('extinctionPerMetre'), lengthMetres: values.number('lengthMetres') };
    });
    const decibels = lossAlong(stretches, crossingsOf(i));
    return { decibels, percent: decibelsToPercent(decibels) };
  },
  'visibility-from-obscuration': (i) =>
    visibility(
      converted(i.number('percent'), 'percent', 'extinction-per-metre', i.number('pathMetres')),
      i.number('constant'),
    ),
  // The printed answers round ln 10 to 2.303: exact answers are brought to that before they are compared.
  'visibility-from-mass-optical-density': (i) => {
    const density = i.number('massOpticalDensitySquareMetrePerGram') * i.number('fuelGramPerCubicMetre');
    const extinction = converted(density, 'optical-density-per-metre', 'extinction-per-metre');
    return (visibility(extinction, i.number('constant')) * Math.LN10) / handbookLn10;
  },
  'visibility-from-optical-density': (i) => {
    const extinction = converted(
      i.number('opticalDensityPerMetre'),
      'optical-density-per-metre',
      'extinction-per-metre',
    );
    return (visibility(extinction, i.number('constant')) * Math.LN10) / handbookLn10;
  },
  'visibility-from-mass-concentration': (i) => {
    const extinction = sootToExtinction(
      i.number('sootPoundPerCubicFoot') * poundPerCubicFoot,
      i.number('massSpecificExtinctionSquareFootPerPound') * squareFootPerPound,
    );
    return visibility(extinction, i.number('constant')) / 0.3048; // the case is in feet
  },
  'transmittance-from-visual-range': (i) => {
    const extinction = visualRangeToExtinction(i.number('visualRangeMetres'), i.number('contrast'));
    return converted(extinction, 'extinction-per-metre', 'transmittance', i.number('distanceMetres'));
  },
  'meteorological-optical-range': (i) => opticalRange(i.number('transmittance'), i.number('baselineMetres')),
  'visual-range-from-extinction': (i) => visualRange(i.number('extinctionPerMetre'), i.number('contrast')),
  deciview: (i) => deciview(i.number('extinctionPerKilometre') / 1000),
  'obscuration-with-covered-reading': (i) =>
    levelToPercent(readingToLevel(i.number('reading'), i.number('cleanAir'), i.number('covered'))),
  'largest-obscuration-readable': (i) => ({
    apparentPercent: apparentObscuration(i.number('smokePercent'), i.number('cleanAir'), i.number('covered')),
  }),
  'test-filter': (i) => {
    const decibels = crossingsOf(i) * levelToDecibels(i.number('filterTransmittance'));
    return { decibels, percent: decibelsToPercent(decibels) };
  },
  'cover-strip-on-rectangle': (i) => {
    const level = 1 - i.number('coveredMillimetres') / i.number('heightMillimetres');
    return { percent: levelToPercent(level), decibels: levelToDecibels(level) };
  },
  'compensation-limit': (i) => {
    const initialDecibels = percentToDecibels(i.number('initialThresholdPercent'));
    const limitDecibels = compensationRatio.value * initialDecibels;
    return { initialDecibels, limitDecibels, limitPercent: decibelsToPercent(limitDecibels) };
  },
  'extinction-from-soot': (i) => sootToExtinction(i.number('soot_mg_per_m3') * 1e-6, i.number('km_m2_per_kg')),
  'obscuration-of-soot': (i) =>
    obscuration(sootToExtinction(i.number('soot_mg_per_m3') * 1e-6, i.number('km_m2_per_kg')), i.number('path_m')),
  'visibility-from-extinction': (i) => visibility(i.number('k_per_m'), i.number('c')),
  'joined-percentages': (i) =>
    decibelsToPercent(i.list('parts_pct').reduce<number>((sum, part) => sum + percentToDecibels(Number(part)), 0)),
  'density-from-soot': (i) =>
    converted(
      sootToExtinction(i.number('soot_g_per_m3') / 1000, i.number('km_m2_per_kg')),
      'extinction-per-metre',
      'optical-density-per-metre',
    ),
  'density-to-percent': (i) => converted(i.number('od_per_m'), 'optical-density-per-metre', 'percent-per-metre'),
  'density-to-transmittance': (i) =>
    100 * converted(i.number('od_per_m'), 'optical-density-per-metre', 'transmittance', 1),
  'per-foot-to-per-metre': (i) => converted(i.number('pct_per_ft'), 'percent-per-foot', 'percent-per-metre'),
  'decibels-to-percent': (i) => converted(i.number('m_db_per_m'), 'decibels-per-metre', 'percent-per-metre'),
  'mass-optical-density': (i) =>
    converted(i.number('soot_yield') * i.number('km_m2_per_g'), 'extinction-per-metre', 'optical-density-per-metre'),
  'aerosol-obscuration': (i) =>
    obscuration(
      sootToExtinction(i.number('mass_mg_per_m3') * 1e-6, i.number('km_m2_per_g') * 1000),
      i.number('smoke_length_m'),
    ),
  'fog-obscuration': (i) => obscuration(i.number('koschmieder') / i.number('visibility_m'), i.number('path_m')),
};

function compare(actual: Answer | undefined, expected: Answer, tolerance: Answer): void {
  if (typeof expected === 'number') {
    expect(Math.abs(Number(actual) - expected)).toBeLessThanOrEqual(Number(tolerance));
    return;
  }
  for (const [name, value] of Object.entries(expected)) {
    compare(
      typeof actual === 'object' ? actual[name] : undefined,
      value,
      typeof tolerance === 'object' ? (tolerance[name] ?? Number.NaN) : Number.NaN,
    );
  }
}

describe('published cases', () => {
  it.each(published.map((one) => [`${one.source}: ${one.quantity} (${one.id})`, one] as const))('%s', (_, one) => {
    const solver = solvers[one.quantity];
    if (solver === undefined) throw new Error(`nothing answers ${one.quantity}`);
    compare(solver(new Inputs(one.inputs)), one.expected as Answer, one.tolerance as Answer);
  });

  it('none is lost: every quantity has cases, every case is counted', () => {
    expect(published.length).toBe(67);
    expect(new Set(published.map(({ quantity }) => quantity))).toEqual(new Set(Object.keys(solvers)));
  });

  it('CIBSE Guide E and SFPE Handbook: K is 8 for a light-emitting sign, with ln 10 unrounded 6.948711710 m', () => {
    const extinction = converted(0.5, 'optical-density-per-metre', 'extinction-per-metre');
    expect(visibility(extinction, lightEmittingSign.value)).toBeCloseTo(6.94871171, 8);
  });
});
