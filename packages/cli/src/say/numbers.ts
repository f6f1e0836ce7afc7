/** Whole numbers in groups of three: 172800 as "172 800". */
export const counted = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ' ');

/** A number as a person wants it: three significant digits, no exponent, no trailing zeros. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'not known' : value > 0 ? 'infinite' : '-infinite';
  const size = Math.abs(value);
  if (size >= 1000) return `${value < 0 ? '-' : ''}${counted(size)}`;
  if (size !== 0 && size < 1e-6) return value.toExponential(2);
  const digits = size === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(size)));
  return String(Number(value.toFixed(Math.min(digits, 20))));
}

/** "1 sample", "172 800 samples". */
export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${counted(count)} ${count === 1 ? one : many}`;
