/** Most readings that are looked at. */
const readingsLookedAt = 1 << 14;
/** Most different values that are remembered. */
const mostValues = 1 << 12;
/** Share of the readings that must stand on a step. */
const most = 0.98;

/** Looks at the first readings of a beam to tell the smallest step of its scale. */
export class ScaleSeen {
  private readonly values = new Map<number, number>();
  private seen = 0;

  /** Whether enough has been seen. */
  get full(): boolean {
    return this.seen >= readingsLookedAt || this.values.size >= mostValues;
  }

  see(readings: Float64Array, count: number): void {
    for (let row = 0; row < count && !this.full; row++) {
      const reading = readings[row] as number;
      if (Number.isNaN(reading)) continue;
      this.seen++;
      this.values.set(reading, (this.values.get(reading) ?? 0) + 1);
    }
  }

  /** Smallest step [as logged]; 0 where it is finer than can be told. */
  step(): number {
    return smallestStep(this.values);
  }
}

/**
 * Smallest step of a scale. Two things tell it: the decimals on which nearly all values stand, and the distance of
 * neighbouring values. A scale of 4095 steps written with two decimals has steps of 0.02 and 0.03: there the distance
 * tells more than the decimals.
 *
 * @param values different values and how often each was read
 * @returns in the unit of the values; 0 where it is finer than can be told, or nothing tells it
 */
export function smallestStep(values: ReadonlyMap<number, number>): number {
  let readings = 0;
  for (const times of values.values()) readings += times;
  if (values.size < 2) return 0;
  const unit = decimalUnit(values, readings);
  if (unit === 0) return 0;
  const rising = [...values.keys()].sort((a, b) => a - b);
  const multiple = commonMultiple(rising, values, readings, unit);
  // Where each value was read again and again, its neighbours were not missed by chance.
  if (readings < 5 * values.size) return multiple;
  const often = rising.filter((value) => (values.get(value) ?? 0) >= 3);
  const steps = often
    .slice(1)
    .map((value, at) => value - (often[at] as number))
    .sort((a, b) => a - b);
  return Math.max(multiple, tidy(steps[Math.floor(steps.length / 10)] ?? multiple, unit));
}

/** A difference of decimals without the last digits that subtraction leaves. */
const tidy = (step: number, unit: number): number => Math.round(step / unit) * unit;

/** 1, 0.1 … 0.000001: the coarsest on which nearly all values stand; 0 where none is. */
function decimalUnit(values: ReadonlyMap<number, number>, readings: number): number {
  for (let decimals = 0; decimals <= 6; decimals++) {
    const scale = 10 ** decimals;
    let on = 0;
    for (const [value, times] of values) {
      const scaled = value * scale;
      if (Math.abs(scaled - Math.round(scaled)) < 1e-6 * Math.max(1, Math.abs(scaled) * 1e-6)) on += times;
    }
    if (on >= most * readings) return 1 / scale;
  }
  return 0;
}

/** Largest multiple of the unit by which nearly all values stand apart. */
function commonMultiple(
  rising: readonly number[],
  values: ReadonlyMap<number, number>,
  readings: number,
  unit: number,
): number {
  for (const multiple of [100, 50, 25, 20, 10, 5, 4, 2]) {
    const remainders = new Map<number, number>();
    for (const value of rising) {
      const remainder = ((Math.round(value / unit) % multiple) + multiple) % multiple;
      remainders.set(remainder, (remainders.get(remainder) ?? 0) + (values.get(value) ?? 0));
    }
    const [largest = 0] = [...remainders.values()].sort((a, b) => b - a);
    const stands = rising.length > 2 || multiple * unit <= (rising[1] as number) - (rising[0] as number);
    if (largest >= most * readings && stands) return multiple * unit;
  }
  return unit;
}
