import { figure } from '../numbers.js';

/** A number of an answer, where null is not known and a word has no end. */
export const told = (value: number | string | null, unit = ''): string =>
  value === null
    ? 'not known'
    : typeof value === 'string'
      ? value
      : `${Math.abs(value) < 5e-6 ? 0 : figure(value)}${unit && ` ${unit}`}`;

/** A number with its limits: "0.5 (0.49 to 0.51)". */
export const toldBetween = (
  {
    value,
    low,
    high,
  }: {
    readonly value: number | string | null;
    readonly low: number | string | null;
    readonly high: number | string | null;
  },
  unit = '',
): string => `${told(value, unit)} (${told(low)} to ${told(high)})`;
