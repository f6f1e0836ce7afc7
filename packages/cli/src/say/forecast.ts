import type { ForecastJson } from 'beamkeep';
import { figure } from './numbers.js';

/** The forecast as a sentence. */
export function forecastSentence(forecast: ForecastJson | null): string {
  if (forecast === null) return 'Forecast: no slow loss here that supports a date.';
  const { obscuration, ends, median, low, high } = forecast;
  const margin =
    ends === 'alarm'
      ? `at its daily low reaches the alarm threshold, ${figure(obscuration)} %,`
      : `uses up the equipment's compensation, ${figure(obscuration)} %,`;
  const range =
    high === null
      ? `hardly before ${low}; the trend sets no latest date`
      : `with 80 % probability between ${low} and ${high}`;
  return `Forecast: as it goes now the slow loss ${margin} about ${median}, ${range}.`;
}
