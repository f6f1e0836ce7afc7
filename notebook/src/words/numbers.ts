/*
 * Numbers, lengths and dates by the reader's locale; times on the site's clock.
 */

const figures = new Map<string, Intl.NumberFormat>();

/** A number with so many significant digits: "1,234", "0.0451", "−2". */
export function figure(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'none' : 'without end';
  const whole = Math.abs(value) >= 10 ** digits;
  const key = whole ? 'whole' : String(digits);
  let format = figures.get(key);
  if (!format) {
    format = new Intl.NumberFormat(
      undefined,
      whole ? { maximumFractionDigits: 0 } : { maximumSignificantDigits: digits },
    );
    figures.set(key, format);
  }
  return format.format(value).replace('-', '−');
}

const thousands = new Intl.NumberFormat();
const wholes = new Intl.NumberFormat(undefined, { maximumFractionDigits: 0 });

/** A whole number with its thousands apart. */
export const counted = (value: number): string => thousands.format(value);

/** A share as a percentage: 0.934 is "93 %". */
export const percent = (share: number): string => `${wholes.format(100 * share)} %`;

/** Bytes as people read them: "2.9 MB". */
export function bytesInWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`;
  if (bytes < 1_000_000) return `${figure(bytes / 1000, 3)} kB`;
  if (bytes < 1_000_000_000) return `${figure(bytes / 1_000_000, 3)} MB`;
  return `${figure(bytes / 1_000_000_000, 3)} GB`;
}

/** A length of time: "45 s", "20 min", "3.5 h", "12 days". */
export function lengthInWords(milliseconds: number): string {
  const seconds = milliseconds / 1000;
  if (seconds < 120) return `${figure(seconds, 2)} s`;
  if (seconds < 7200) return `${figure(seconds / 60, 2)} min`;
  if (seconds < 2 * 86_400) return `${figure(seconds / 3600, 2)} h`;
  return `${figure(seconds / 86_400, 2)} days`;
}

/** A value and its unit as a person reads them: two minutes or more, in seconds, as minutes, hours or days. */
export function measured(value: number, unit: string): readonly [value: string, unit: string] {
  if (unit !== 's' || !Number.isFinite(value) || value < 120) return [figure(value), unit];
  const [long = '', words = ''] = lengthInWords(1000 * value).split(' ');
  return [long, words];
}
