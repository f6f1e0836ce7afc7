import { describe, expect, it } from 'vitest';
import { forecastSentence } from './forecast.js';

const forecast = {
  obscuration: 35,
  ends: 'alarm',
  median: '2027-10-02',
  low: '2027-08-20',
  high: '2027-12-15',
} as const;

describe('forecastSentence', () => {
  it('gives the date and its 80 % interval', () =>
    expect(forecastSentence(forecast)).toBe(
      'Forecast: as it goes now the slow loss at its daily low reaches the alarm threshold, 35 %, about 2027-10-02, with 80 % probability between 2027-08-20 and 2027-12-15.',
    ));
  it('says that the late end is open', () =>
    expect(forecastSentence({ ...forecast, high: null })).toContain(
      'hardly before 2027-08-20; the trend sets no latest date',
    ));
  it('says that compensation ends, where it does', () =>
    expect(forecastSentence({ ...forecast, ends: 'compensation-limit' })).toContain(
      "uses up the equipment's compensation",
    ));
  it('says that there is none', () =>
    expect(forecastSentence(null)).toContain('no slow loss here that supports a date'));
});
