import { day, hour, minute } from '../columns/index.js';
import type { Evidence } from './finding.js';

/** A share of clean air in percent, rounded to what a person reads. */
export const percent = (share: number): number => round(100 * share, 3);

/** A number to so many significant digits. */
export function round(value: number, digits: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(digits)) : value;
}

/** One line of evidence. */
export const evidence = (measure: string, value: number, unit: string): Evidence => ({
  measure,
  value: round(value, 4),
  unit,
});

/** A length of time in the unit that a person would use. */
export function spell(milliseconds: number): string {
  if (milliseconds < 2 * minute) return `${round(milliseconds / 1000, 2)} s`;
  if (milliseconds < 2 * hour) return `${Math.round(milliseconds / minute)} min`;
  if (milliseconds < 2 * day) return `${round(milliseconds / hour, 2)} h`;
  return `${Math.round(milliseconds / day)} days`;
}

/** A number of things, "1 night", "3 nights". */
export const counted = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`;

/** A time of day from hours, "06:40". */
export function clockTime(hours: number): string {
  const minutes = Math.round((((hours % 24) + 24) % 24) * 60) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** A logistic curve from 0 to 1. */
export const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
