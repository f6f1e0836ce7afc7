import { mean } from '../moments.js';

/**
 * How much values resemble those some rows later: 1 alike, 0 unrelated, -1 opposite.
 *
 * @param values evenly spaced rows, NaN where missing (pairs with a missing row are left out)
 * @param lags greatest distance [rows]
 * @returns one for each distance from 0 to `lags`; NaN where the values do not vary
 *
 * Divided by the squares of all values, not of the pairs: a little small at great distances, and never beyond 1.
 * Source: definition of NIST StRD (lag 1, certified) and statsmodels acf(adjusted=False).
 * @example autocorrelation([1, 2, 3, 4], 1) // 1, 0.25
 */
export function autocorrelation(values: ArrayLike<number>, lags: number): Float64Array {
  const middle = mean(values);
  const off = Float64Array.from(values, (value) => (Number.isNaN(value) ? 0 : value - middle));
  const products = new Float64Array(lags + 1);
  for (let lag = 0; lag <= lags; lag++) {
    let sum = 0;
    for (let i = lag; i < off.length; i++) sum += (off[i] as number) * (off[i - lag] as number);
    products[lag] = sum;
  }
  const squares = products[0] as number;
  return products.map((product) => (squares > 0 ? product / squares : Number.NaN));
}
