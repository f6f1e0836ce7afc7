import { describe, expect, it } from 'vitest';
import { parseSite } from './parseSite.js';

const withReadings = (readings: object) =>
  parseSite(
    {
      beams: [
        { id: 'B1', layout: 'reflective', separation: 62 },
        { id: 'B2', layout: 'end-to-end', separation: 9, ...readings },
      ],
    },
    'tram-depot.site.json',
  );

describe('clean-air and covered readings', () => {
  it('says the remedy for a covered reading above clean air', () =>
    expect(() => withReadings({ covered: 120 })).toThrow(
      'tram-depot.site.json: beams[1] "B2": covered is 120, above cleanAir (100). Cover the whole reflector, read again, write that reading.',
    ));

  it.each([
    { covered: 0 },
    { covered: 50 },
    { signalUnit: 'decibels', covered: -21.99 },
    { signalUnit: 'decibels', cleanAir: -3.5, covered: -40 },
    { signalUnit: 'obscuration', covered: 99.6 },
    { signalUnit: 'obscuration', cleanAir: -2, covered: 100 },
    { signalUnit: 'counts', covered: 17 },
    { signalUnit: 'millivolts', cleanAir: 822, covered: 10.1 },
  ])('takes %j', (readings) => expect(withReadings(readings).beams[1]).toMatchObject(readings));

  it.each([
    [{ covered: 100 }, 'covered is 100, the same as cleanAir (100)'],
    [{ covered: -1 }, 'covered is -1: with signalUnit "percent" it must be a percentage from 0 to 1000'],
    [
      { cleanAir: 0 },
      'cleanAir is 0: with signalUnit "percent" it must be a percentage from 0 to 1000, with light left',
    ],
    [{ signalUnit: 'decibels', covered: 1 }, 'covered is 1, above cleanAir (0)'],
    [{ signalUnit: 'decibels', covered: -2000 }, 'covered is -2000: with signalUnit "decibels" it must be decibels'],
    [{ signalUnit: 'obscuration', covered: 0 }, 'covered is 0, not above cleanAir (0)'],
    [{ signalUnit: 'obscuration', cleanAir: 100 }, 'cleanAir is 100: with signalUnit "obscuration"'],
    [{ signalUnit: 'counts', cleanAir: 0 }, 'cleanAir is 0: with signalUnit "counts"'],
    [{ signalUnit: 'counts', covered: -3 }, 'covered is -3: with signalUnit "counts" it must be 0 or more'],
  ])('refuses %j', (readings, message) => expect(() => withReadings(readings)).toThrow(message));
});
