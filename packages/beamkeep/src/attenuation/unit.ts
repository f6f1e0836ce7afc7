import { UsageError } from '../columns/index.js';

/** Units of obscuration, in the order in which they are listed to people. */
export const units = [
  'transmittance',
  'percent',
  'optical-density',
  'decibels',
  'percent-per-metre',
  'percent-per-foot',
  'optical-density-per-metre',
  'optical-density-per-foot',
  'decibels-per-metre',
  'extinction-per-metre',
] as const;

/** A unit of obscuration: of the whole path, or of each metre or foot of it. */
export type Unit = (typeof units)[number];

/**
 * The unit of that name.
 *
 * @param name as written by a person
 * @param argument what the name was given for, told in the error
 * @throws UsageError that lists the units
 */
export function unitNamed(name: string, argument: string): Unit {
  const unit = units.find((known) => known === name);
  if (unit === undefined) throw new UsageError(`${argument} "${name}" is not a unit: use ${units.join(', ')}`);
  return unit;
}
