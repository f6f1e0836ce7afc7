import type { Climate } from '../weather.js';

/** Where an invented depot may stand: a zone, a spot on the map, a climate. */
export interface Place {
  readonly timeZone: string;
  /** Degrees, north positive. */
  readonly latitude: number;
  /** Degrees, east positive. */
  readonly longitude: number;
  readonly climate: Climate;
}

const climate = (
  mean: number,
  season: number,
  daily: number,
  fronts: number,
  cloud: number,
  mood: number,
  dryness: number,
): Climate => ({ mean, season, daily, fronts, cloud, mood, dryness });

/** Places on whose logs the weighing is trained. Climates are round figures, not records. */
export const weighingPlaces: readonly Place[] = [
  { timeZone: 'Europe/Lisbon', latitude: 41.1, longitude: -8.6, climate: climate(15, 5.5, 9, 2.5, 0.45, 2, 5) },
  { timeZone: 'Europe/London', latitude: 52.2, longitude: -1.5, climate: climate(10.5, 6.5, 7, 3, 0.65, 1.5, 3.5) },
  { timeZone: 'Europe/Berlin', latitude: 52.5, longitude: 13.3, climate: climate(10, 9.5, 8.5, 4, 0.6, 2, 4) },
  { timeZone: 'Europe/Madrid', latitude: 40.4, longitude: -3.6, climate: climate(15, 9.5, 13, 3, 0.35, 3, 9) },
  { timeZone: 'America/Chicago', latitude: 41.8, longitude: -87.7, climate: climate(10.5, 13.5, 10, 5, 0.55, 1.8, 5) },
  { timeZone: 'America/Phoenix', latitude: 33.5, longitude: -112, climate: climate(23.5, 11, 14, 2.5, 0.2, 4, 16) },
  { timeZone: 'America/Sao_Paulo', latitude: -23.5, longitude: -46.7, climate: climate(20, 3.5, 9.5, 2.5, 0.55, 2, 4) },
  { timeZone: 'Asia/Tokyo', latitude: 35.7, longitude: 139.7, climate: climate(16, 10.5, 8, 2.5, 0.55, 2, 6) },
  { timeZone: 'Asia/Singapore', latitude: 1.35, longitude: 103.8, climate: climate(27.5, 0.7, 6.5, 1, 0.65, 1, 3.5) },
  { timeZone: 'Australia/Sydney', latitude: -33.9, longitude: 151, climate: climate(18.5, 5.5, 8, 3, 0.45, 2, 6) },
];

/** Places of the held-out set: other skies, other zones (half hours among them), other seasons. */
export const heldOutPlaces: readonly Place[] = [
  { timeZone: 'Europe/Warsaw', latitude: 52.3, longitude: 20.9, climate: climate(9, 11, 9, 4.5, 0.6, 2.2, 4) },
  { timeZone: 'Europe/Athens', latitude: 37.9, longitude: 23.8, climate: climate(18.5, 9, 9, 2.5, 0.3, 3, 9) },
  { timeZone: 'Europe/Helsinki', latitude: 60.2, longitude: 24.9, climate: climate(6.5, 11.5, 7.5, 4.5, 0.62, 1.7, 3) },
  { timeZone: 'America/Denver', latitude: 39.7, longitude: -104.9, climate: climate(10.5, 12, 16, 5.5, 0.38, 1.5, 11) },
  { timeZone: 'America/Halifax', latitude: 44.6, longitude: -63.6, climate: climate(7, 11.5, 8, 4.5, 0.6, 1.5, 3.5) },
  { timeZone: 'America/Santiago', latitude: -33.5, longitude: -70.7, climate: climate(15, 6.5, 15, 2.5, 0.35, 3, 8) },
  { timeZone: 'Africa/Johannesburg', latitude: -26.2, longitude: 28, climate: climate(16, 5, 12.5, 2.5, 0.3, 2.5, 8) },
  { timeZone: 'Asia/Kolkata', latitude: 28.6, longitude: 77.2, climate: climate(25, 9, 12, 1.8, 0.35, 4, 9) },
  { timeZone: 'Australia/Adelaide', latitude: -34.9, longitude: 138.6, climate: climate(17, 6, 11, 3.5, 0.4, 2, 8) },
  { timeZone: 'Pacific/Auckland', latitude: -36.9, longitude: 174.8, climate: climate(15.5, 4.5, 7, 2.5, 0.6, 1.5, 4) },
  { timeZone: 'America/New_York', latitude: 40.7, longitude: -74, climate: climate(13, 12, 8.5, 4.5, 0.52, 1.8, 6) },
];
