/** One line of a spectrum. */
export interface Line {
  /** Square of the transform's size at the bin [square of the values' unit]; a cosine on a bin gives (amplitude n/2)^2. */
  readonly power: number;
  /** Amplitude of the cosine that would give this power [unit of the values]. */
  readonly amplitude: number;
  /** Phase p of amplitude cos(turn - p) [radians], turns counted from the first sample. */
  readonly phase: number;
}

/** Bin of a frequency: its cycles in the record; a whole number where the record holds whole cycles. */
export const binOf = (frequency: number, rate: number, samples: number) => (frequency * samples) / rate;

/** Frequency of a bin [unit of the rate]. */
export const frequencyOf = (bin: number, rate: number, samples: number) => (bin * rate) / samples;

/** Factor of Goertzel's recursion: twice the cosine of the turn from one sample to the next. */
export const goertzelCoefficient = (bin: number, samples: number) => 2 * Math.cos((2 * Math.PI * bin) / samples);

/**
 * One line of the spectrum of a record, by a recursion with one multiplication a sample.
 *
 * @param values evenly spaced samples about their mean, NaN where missing (counts as 0)
 * @param bin cycles in the record; need not be whole
 *
 * Source: Goertzel, American Mathematical Monthly 65 (1958); power as in the Berkeley report on tone decoding.
 * @example goertzel(values, binOf(24.3, 100, values.length)).amplitude
 */
export function goertzel(values: ArrayLike<number>, bin: number): Line {
  const samples = values.length;
  const coefficient = goertzelCoefficient(bin, samples);
  let last = 0;
  let lastButOne = 0;
  for (let i = 0; i < samples; i++) {
    const value = values[i] as number;
    const next = (Number.isNaN(value) ? 0 : value) + coefficient * last - lastButOne;
    lastButOne = last;
    last = next;
  }
  const power = last * last + lastButOne * lastButOne - coefficient * last * lastButOne;
  const turn = (2 * Math.PI * bin) / samples;
  const real = last - lastButOne * Math.cos(turn);
  const imaginary = lastButOne * Math.sin(turn);
  const angle = Math.atan2(imaginary, real) - turn * (samples - 1); // of the transform, first sample at 0
  return {
    power,
    amplitude: (2 * Math.sqrt(Math.max(power, 0))) / samples,
    phase: Math.atan2(-Math.sin(angle), Math.cos(angle)),
  };
}
