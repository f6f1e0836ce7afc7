import { day, hour, minute, second } from '../columns/index.js';

/** A number as a person reads it: three significant digits, no exponent for what is met here. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)));

/** A share of the light or an obscuration, signs of nothing left out: "35.9 %", "0 %". */
export const percent = (value: number): string => `${Math.abs(value) < 0.05 ? 0 : figure(Number(value.toFixed(1)))} %`;

/** How long, in the unit that a person would use. */
export function lengthInWords(milliseconds: number): string {
  if (milliseconds < 2 * minute) return `${figure(milliseconds / second)} s`;
  if (milliseconds < 2 * hour) return `${Math.round(milliseconds / minute)} min`;
  if (milliseconds < 2 * day) return `${Number((milliseconds / hour).toPrecision(2))} h`;
  return `${Math.round(milliseconds / day)} days`;
}

/** "1 day", "3 days". */
export const plural = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** A text that ends as a sentence. */
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
