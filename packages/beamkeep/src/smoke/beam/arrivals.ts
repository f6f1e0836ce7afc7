/**
 * What has come by every second, when what leaves in a second is late by its own lag: the latest that has come by then.
 *
 * Smoke of a growing fire overtakes what left before it; what is overtaken does not count.
 *
 * @param values what leaves in every second
 * @param lags how long it takes [s]; infinite: it never comes
 * @returns one value a second; 0 before anything has come
 */
export function arrivals(values: Float64Array, lags: Float64Array): Float64Array {
  const arrived = new Float64Array(values.length);
  let settled = values.length;
  for (let left = values.length - 1; left >= 0; left--) {
    const at = Math.ceil(left + (lags[left] as number));
    if (at >= settled) continue;
    arrived.fill(values[left] as number, at, settled);
    settled = at;
  }
  return arrived;
}
