import { mean } from '../moments.js';

/**
 * Power at chosen frequencies of samples that are not evenly spaced.
 *
 * @param time instants, any unit and order
 * @param values one an instant, NaN where missing (left out); their mean is taken off
 * @param frequencies cycles a unit of time, above 0
 * @returns half the power of the best sine at each frequency, times the number of samples over 2 [square of the unit]
 *
 * Classical form: the phase shift tau makes it equal to a least-squares fit of a sine and a cosine. In white noise the
 * power over the variance of the values exceeds p with chance exp(-p) at one frequency.
 * Source: Scargle, Astrophysical Journal 263 (1982), from memory; agrees with scipy.
 * @example lombScargle(days, level, [1]) // the daily cycle
 */
export function lombScargle(
  time: ArrayLike<number>,
  values: ArrayLike<number>,
  frequencies: ArrayLike<number>,
): Float64Array {
  const middle = mean(values);
  return Float64Array.from(frequencies, (frequency) => powerAt(time, values, middle, 2 * Math.PI * frequency));
}

function powerAt(time: ArrayLike<number>, values: ArrayLike<number>, middle: number, turn: number): number {
  // sums over the samples of y cos, y sin, cos^2 - sin^2 and 2 sin cos; the shift then makes sine and cosine independent
  let yCos = 0;
  let ySin = 0;
  let cosDouble = 0;
  let sinDouble = 0;
  let count = 0;
  const origin = (time[0] as number) ?? 0;
  for (let i = 0; i < values.length; i++) {
    const off = (values[i] as number) - middle;
    if (Number.isNaN(off)) continue;
    const angle = turn * ((time[i] as number) - origin);
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    yCos += off * cos;
    ySin += off * sin;
    cosDouble += cos * cos - sin * sin;
    sinDouble += 2 * sin * cos;
    count++;
  }
  const shift = Math.atan2(sinDouble, cosDouble) / 2;
  const cosine = yCos * Math.cos(shift) + ySin * Math.sin(shift);
  const sine = ySin * Math.cos(shift) - yCos * Math.sin(shift);
  const length = Math.hypot(cosDouble, sinDouble);
  const cosSquares = (count + length) / 2;
  const sinSquares = (count - length) / 2;
  // all samples on the sine's zeros: it explains nothing
  const sinePower = sinSquares > 1e-12 * count ? (sine * sine) / sinSquares : 0;
  return count === 0 ? Number.NaN : ((cosine * cosine) / cosSquares + sinePower) / 2;
}
