/** Most readings that are looked at. */
const readingsLookedAt = 1 << 14;
/** Most different values that are remembered. */
const mostValues = 1 << 12;
/** Share of the values, each by its weight, that must stand on a step. */
const most = 0.98;
/** Values under which they are few, and the share of the largest, or of the full scale, within which neighbours lie close. Own choice. */
const few = 8;
const close = 1 / 40;

/**
 * Looks at the first readings of a beam that differ from the one before to tell the smallest step of its scale. A value
 * held says nothing of it: a quiet beam that reads 100.0 for weeks may fall by tenths as smoke comes.
 */
export class ScaleSeen {
  private readonly values = new Map<number, number>();
  private seen = 0;
  private last = Number.NaN;

  /** @param fullScale of the readings, where they lie about 0: see `smallestStep` */
  constructor(private readonly fullScale = 0) {}

  /** Whether enough has been seen. */
  get full(): boolean {
    return this.seen >= readingsLookedAt || this.values.size >= mostValues;
  }

  see(readings: Float64Array, count: number): void {
    for (let row = 0; row < count && !this.full; row++) {
      const reading = readings[row] as number;
      if (Number.isNaN(reading) || reading === this.last) continue;
      this.last = reading;
      this.seen++;
      this.values.set(reading, (this.values.get(reading) ?? 0) + 1);
    }
  }

  /** Smallest step [as logged]; 0 where it is finer than can be told. */
  step(): number {
    return smallestStep(this.values, this.fullScale);
  }
}

/**
 * Smallest step of a scale. Two things tell it: the decimals on which nearly all values stand, and the distance of
 * neighbouring values. A scale of 4095 steps written with two decimals has steps of 0.02 and 0.03: there the distance
 * tells more than the decimals.
 *
 * @param values different values and how often each was read
 * @param fullScale of the readings, where it is more than the largest of them: losses of a clean beam lie about 0
 * @returns in the unit of the values; 0 where it is finer than can be told, or nothing tells it
 */
export function smallestStep(values: ReadonlyMap<number, number>, fullScale = 0): number {
  if (values.size < 2) return 0;
  // By the root of how often it was read: the clean reading of a quiet beam must not outvote all others.
  const weights = new Map([...values].map(([value, times]) => [value, Math.sqrt(times)] as const));
  const unit = decimalUnit(weights);
  if (unit === 0) return 0;
  const rising = [...values.keys()].sort((a, b) => a - b);
  const multiple = commonMultiple(rising, weights, unit, fullScale);
  // Where each value was read again and again, its neighbours were not missed by chance.
  const often = rising.filter((value) => (values.get(value) ?? 0) >= 3);
  if (often.length < few || sum(values) < 5 * values.size) return multiple;
  return Math.max(multiple, tidy(stepsOf(often)[Math.floor((often.length - 1) / 10)] ?? multiple, unit));
}

const sum = (of: ReadonlyMap<number, number>): number => [...of.values()].reduce((total, one) => total + one, 0);

/** How far neighbouring values stand apart, the least first. */
const stepsOf = (rising: readonly number[]): number[] =>
  rising
    .slice(1)
    .map((value, at) => value - (rising[at] as number))
    .sort((a, b) => a - b);

/** A difference of decimals without the last digits that subtraction leaves. */
const tidy = (step: number, unit: number): number => Math.round(step / unit) * unit;

/** 1, 0.1 … 0.000001: the coarsest on which nearly all values stand; 0 where none is. */
function decimalUnit(weights: ReadonlyMap<number, number>): number {
  const all = sum(weights);
  for (let decimals = 0; decimals <= 6; decimals++) {
    const scale = 10 ** decimals;
    let on = 0;
    for (const [value, weight] of weights) {
      const scaled = value * scale;
      if (Math.abs(scaled - Math.round(scaled)) < 1e-6 * Math.max(1, Math.abs(scaled) * 1e-6)) on += weight;
    }
    if (on >= most * all) return 1 / scale;
  }
  return 0;
}

/**
 * Largest multiple of the unit by which nearly all values stand apart. Few values must be neighbours to tell it, and lie
 * close: open, covered and halved stand far apart on whatever scale.
 */
function commonMultiple(
  rising: readonly number[],
  weights: ReadonlyMap<number, number>,
  unit: number,
  fullScale: number,
): number {
  const all = sum(weights);
  const [least = 0] = stepsOf(rising);
  const closest = Math.max(fullScale, ...rising.map(Math.abs)) * close;
  for (const multiple of [100, 50, 25, 20, 10, 5, 4, 2]) {
    const step = multiple * unit;
    const remainders = new Map<number, number>();
    for (const value of rising) {
      const remainder = ((Math.round(value / unit) % multiple) + multiple) % multiple;
      remainders.set(remainder, (remainders.get(remainder) ?? 0) + (weights.get(value) ?? 0));
    }
    const stands = rising.length >= few || (step > 0.999 * least && step <= closest);
    if (Math.max(...remainders.values()) >= most * all && stands) return step;
  }
  return unit;
}
