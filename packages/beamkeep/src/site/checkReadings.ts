import { linearReading } from './linearReading.js';
import type { Refuse } from './place.js';
import type { Beam, SignalUnit } from './site.js';

/** What a reading may be at all, by its unit, and how that is said. */
const possible: Readonly<Record<SignalUnit, { readonly holds: (reading: number) => boolean; readonly words: string }>> =
  {
    percent: { holds: (reading) => reading >= 0 && reading <= 1000, words: 'a percentage from 0 to 1000' },
    obscuration: { holds: (reading) => reading >= -900 && reading <= 100, words: 'an obscuration of at most 100' },
    decibels: { holds: (reading) => Math.abs(reading) <= 200, words: 'decibels from -200 to 200' },
    counts: { holds: (reading) => reading >= 0, words: '0 or more' },
    millivolts: { holds: (reading) => reading >= 0, words: '0 or more' },
  };

/** Refuses clean-air and covered readings that no beam can have; both must be in the unit of the log. */
export function checkReadings(
  { signalUnit, cleanAir, covered }: Pick<Beam, 'signalUnit' | 'cleanAir' | 'covered'>,
  place: string,
  refuse: Refuse,
): void {
  const { holds, words } = possible[signalUnit];
  if (covered !== undefined && !holds(covered))
    refuse(place, `covered is ${covered}: with signalUnit "${signalUnit}" it must be ${words}.`);
  if (cleanAir === undefined) return;
  if (!holds(cleanAir) || linearReading(cleanAir, signalUnit) <= 0)
    refuse(place, `cleanAir is ${cleanAir}: with signalUnit "${signalUnit}" it must be ${words}, with light left.`);
  if (covered === undefined || linearReading(covered, signalUnit) < linearReading(cleanAir, signalUnit)) return;
  const side = signalUnit === 'obscuration' ? 'not above' : covered === cleanAir ? 'the same as' : 'above';
  refuse(
    place,
    `covered is ${covered}, ${side} cleanAir (${cleanAir}). Cover the whole reflector, read again, write that reading.`,
  );
}
