import { UsageError } from '../columns/index.js';
import { foot } from '../numbers/index.js';
import { decibelsToLevel, decibelsToPercent, levelToDecibels, percentToDecibels } from './reading.js';
import { refuseUnlessPositive } from './refuse.js';
import type { Unit } from './unit.js';

/*
 * A unit of obscuration is a scale over a stretch. The stretch is the whole path, a metre or a foot; the scale says
 * the loss of that stretch. Losses in decibels add along the path, so
 *
 *     loss of one stretch = loss of another x ratio of their lengths
 *
 * and nothing else is needed: percent per foot obeys its exponent by itself, 100 (1 - T^(1/feet)).
 *
 *     scale            loss of the stretch [dB]
 *     transmittance T  -10 log10 T
 *     percent p        -10 log10 (1 - p/100)
 *     optical density  10 D            decimal
 *     decibels         d               decimal
 *     extinction k     10 k / ln 10    natural: k = 2.302585 D
 *
 * Sources: CFAST Technical Reference Guide, Visibility (optical density, extinction, percent per metre); FDS Technical
 * Reference Guide, Fire Detection Devices (percent per unit length); 10 dB an optical density by definition.
 */

interface Scale {
  readonly toDecibels: (value: number) => number;
  readonly fromDecibels: (decibels: number) => number;
  /** Greatest value that smoke can have. */
  readonly most: number;
}

const transmittance: Scale = { toDecibels: levelToDecibels, fromDecibels: decibelsToLevel, most: 1 };
const percent: Scale = { toDecibels: percentToDecibels, fromDecibels: decibelsToPercent, most: 100 };
const decimal = (decibelsAUnit: number): Scale => ({
  toDecibels: (value) => value * decibelsAUnit,
  fromDecibels: (decibels) => decibels / decibelsAUnit,
  most: Number.POSITIVE_INFINITY,
});
const density = /* @__PURE__ */ decimal(10);
const decibels = /* @__PURE__ */ decimal(1);
const extinction = /* @__PURE__ */ decimal(10 / Math.LN10);

/** Scale of a unit, and the stretch it speaks of. */
interface Meaning {
  readonly scale: Scale;
  readonly over: 'path' | 'metre' | 'foot';
}

const meanings: Readonly<Record<Unit, Meaning>> = {
  transmittance: { scale: transmittance, over: 'path' },
  percent: { scale: percent, over: 'path' },
  'optical-density': { scale: density, over: 'path' },
  decibels: { scale: decibels, over: 'path' },
  'percent-per-metre': { scale: percent, over: 'metre' },
  'percent-per-foot': { scale: percent, over: 'foot' },
  'optical-density-per-metre': { scale: density, over: 'metre' },
  'optical-density-per-foot': { scale: density, over: 'foot' },
  'decibels-per-metre': { scale: decibels, over: 'metre' },
  'extinction-per-metre': { scale: extinction, over: 'metre' },
};

function refuseOutside(value: number, unit: Unit, { most }: Scale): void {
  if (value >= 0 && value <= most) return;
  const demand = most === Number.POSITIVE_INFINITY ? '0 or more' : `from 0 to ${most}`;
  throw new UsageError(`value ${value} is not smoke in ${unit}: it must be ${demand}`);
}

/** Loss of a stretch that is longer by `ratio`. Nothing stays nothing and darkness dark, however extreme the ratio. */
const stretched = (loss: number, ratio: number): number =>
  ratio === 1 || loss === 0 || loss === Number.POSITIVE_INFINITY ? loss : loss * ratio;

/**
 * An amount of smoke in another unit.
 *
 * @param value amount of smoke [`from`]: 0 or more; a transmittance at most 1, a percentage at most 100
 * @param from unit of `value`
 * @param to unit wanted
 * @param pathMetres length of smoke that the light crosses [m], more than 0: twice the separation of a reflective beam
 *   (`opticalPath`). May be left out where both units speak of the whole path, or both of a metre or foot
 * @returns amount [`to`]; no light at all is Infinity in density, decibels and extinction, and comes back from Infinity
 *   as exactly 0 transmittance or 100 %; NaN in, NaN out
 * @throws UsageError for a value outside its range, for a path that is not more than 0, for a path that is missing
 *
 * Exact at both ends; thin smoke keeps its digits in every unit but transmittance, deep smoke in every unit but
 * percent: from about 160 dB a percentage rounds to 100.
 * @example converted(35, 'percent', 'decibels-per-metre', 50) // 0.037417
 * @example converted(8, 'percent-per-foot', 'percent-per-metre') // 23.933
 */
export function converted(value: number, from: Unit, to: Unit, pathMetres?: number): number {
  if (pathMetres !== undefined) refuseUnlessPositive('path', pathMetres, 'm');
  const source = meanings[from];
  const target = meanings[to];
  if (pathMetres === undefined && (source.over === 'path') !== (target.over === 'path')) {
    throw new UsageError(
      `${from} to ${to}: one of them speaks of the whole path, so the path is needed, in metres; twice the separation of a reflective beam`,
    );
  }
  if (Number.isNaN(value)) return Number.NaN;
  refuseOutside(value, from, source.scale);
  if (from === to) return value;
  const lengths = { path: pathMetres ?? 1, metre: 1, foot: foot.value }; // 1: of no weight where no path is needed
  const ratio = lengths[target.over] / lengths[source.over];
  return target.scale.fromDecibels(stretched(source.scale.toDecibels(value), ratio));
}
