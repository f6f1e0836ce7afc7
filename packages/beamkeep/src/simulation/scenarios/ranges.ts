import type { SignalUnit } from '../../site/index.js';
import type { WorkCalendar } from '../calendar.js';
import type { Lobe } from '../lobe.js';
import type { Recording } from '../recording/recording.js';
import { heldOutPlaces, type Place, weighingPlaces } from './places.js';

/*
 * How widely scenarios are drawn. Two sets: one for weighing the causes, one held out for judging the result. They
 * overlap where physics leaves no choice and differ where a building, a sky, a lobe, a logger or a fire may differ. A
 * pair of numbers is a range from low to high; a list of pairs is a list of choices with their weights.
 */

type Range = readonly [number, number];
type Choices<T> = readonly (readonly [T, number])[];

/** Ranges of everything that is drawn. Shares are of the clean-air span unless said otherwise. */
export interface Ranges {
  readonly places: readonly Place[];
  /** First year and last year of logs. */
  readonly years: Range;
  readonly lobes: Choices<Lobe['shape']>;
  /** Power of flat-topped lobes. */
  readonly lobePower: Range;
  readonly lobeTall: Range;
  readonly lobeLean: Range;
  /** [degrees] */
  readonly halfAngle: Range;
  /** Offset of the aim at commissioning [half-angles]. */
  readonly offset: Range;
  /** Separation of reflective and of end-to-end beams [m]. */
  readonly separation: Range;
  readonly covered: Range;
  readonly units: Choices<SignalUnit>;
  readonly noise: Range;
  /** Spread of the slow wander over that of the samples. */
  readonly wander: Range;
  readonly tails: Range;
  readonly heatNoise: Range;
  readonly shimmer: Range;
  /** [%/year] */
  readonly ageing: Range;
  /** [%/K], either sign */
  readonly temperatureCoefficient: Range;
  /** [%], either sign */
  readonly warmUp: Range;
  /** [K per W/m2] */
  readonly solarGain: Range;
  /** Lag of the thermometer [h]. */
  readonly thermometerLag: Range;
  /** Lag of the structure [h]. */
  readonly structureLag: Range;
  /** Daily swing of the harmless movement, as a share of what would be labelled. */
  readonly harmlessSway: Range;
  /** Effects are drawn as so many times what would be labelled. */
  readonly strength: Range;
  /** [%/day] */
  readonly dirtRate: Range;
  readonly dirtLaw: Choices<'linear' | 'saturating' | 'bursts' | 'weekday'>;
  readonly dirtGrows: Choices<'obscuration' | 'decibels'>;
  /** Spread of the daily rate. */
  readonly dirtUneven: Range;
  readonly cleaningLeaves: Range;
  /** Loss by a knock and by creeping aim. */
  readonly knockLoss: Range;
  readonly creepLoss: Range;
  readonly creepPower: Range;
  /** Daily swing of the level by movement. */
  readonly swing: Range;
  readonly blockDepth: Range;
  /** Loss at the deepest of an ordinary night [dB]. */
  readonly filmDepth: Range;
  readonly filmNights: Range;
  readonly filmDries: Range;
  /** Loss at the deepest of an ordinary working day [dB]. */
  readonly aerosolDepth: Range;
  readonly aerosolActive: Range;
  readonly aerosolRagged: Range;
  readonly lightAdds: Range;
  readonly lightRough: Range;
  readonly vibrationHertz: Range;
  readonly vibrationSwing: Range;
  readonly noiseTimes: Range;
  /** Most spread that interference adds. */
  readonly noiseMost: number;
  /** From first smoke to full loss [s]. */
  readonly smokeGrowth: Range;
  /** Loss at full smoke [dB]. */
  readonly smokePeak: Range;
  readonly smokeClears: Range;
  readonly smokeDither: Range;
  readonly gainControl: { readonly share: number; readonly hours: Range; readonly limit: Range };
  readonly calendars: readonly Pick<WorkCalendar, 'days' | 'opens' | 'closes'>[];
  readonly clocks: Choices<Recording['clock']>;
  readonly jitter: Range;
  /** Share of logs with each fault of the logger, and its rate a line. */
  readonly faults: { readonly share: number; readonly rate: Range };
}

const weekdays = { week: [1, 2, 3, 4, 5] } as const;

/** Ranges for weighing. */
export const weighing: Ranges = {
  places: weighingPlaces,
  years: [2024, 2027],
  lobes: [
    ['gaussian', 5],
    ['flat-topped', 4],
    ['skirted', 1],
  ],
  lobePower: [1.8, 3.2],
  lobeTall: [0.75, 1.3],
  lobeLean: [0, 0.1],
  halfAngle: [0.25, 1.4],
  offset: [0, 0.8],
  separation: [8, 100],
  covered: [0, 0.03],
  units: [
    ['percent', 10],
    ['counts', 4],
    ['millivolts', 3],
    ['decibels', 2],
    ['obscuration', 1],
  ],
  noise: [0.0002, 0.006],
  wander: [0, 0.35],
  tails: [0, 0.03],
  heatNoise: [0, 0.02],
  shimmer: [1, 1.9],
  ageing: [0, 0.45],
  temperatureCoefficient: [0, 0.03],
  warmUp: [0, 0.6],
  solarGain: [0.008, 0.032],
  thermometerLag: [0.2, 3],
  structureLag: [0.5, 6],
  harmlessSway: [0.05, 0.5],
  strength: [0.75, 14],
  dirtRate: [0.012, 0.6],
  dirtLaw: [
    ['linear', 4],
    ['weekday', 3],
    ['saturating', 2],
    ['bursts', 2],
  ],
  dirtGrows: [
    ['decibels', 1],
    ['obscuration', 1],
  ],
  dirtUneven: [0, 0.8],
  cleaningLeaves: [0, 0.35],
  knockLoss: [0.014, 0.5],
  creepLoss: [0.02, 0.45],
  creepPower: [0.8, 2],
  swing: [0.012, 0.22],
  blockDepth: [0.07, 1],
  filmDepth: [0.07, 2],
  filmNights: [0.25, 0.9],
  filmDries: [0.7, 2.5],
  aerosolDepth: [0.1, 2.2],
  aerosolActive: [0.45, 1],
  aerosolRagged: [0.06, 0.35],
  lightAdds: [0.018, 0.3],
  lightRough: [0.02, 0.35],
  vibrationHertz: [0.25, 24],
  vibrationSwing: [0.015, 0.2],
  noiseTimes: [2, 16],
  noiseMost: 0.04,
  smokeGrowth: [20, 7200],
  smokePeak: [0.25, 16],
  smokeClears: [300, 9000],
  smokeDither: [0.03, 0.2],
  gainControl: { share: 0.06, hours: [15, 150], limit: [1, 4] },
  calendars: [
    { days: weekdays, opens: 6, closes: 14 },
    { days: weekdays, opens: 7, closes: 16 },
    { days: weekdays, opens: 6, closes: 22 },
    { days: { week: [1, 2, 3, 4, 5, 6] }, opens: 7, closes: 15 },
    { days: { week: [2, 3, 4, 5, 6] }, opens: 8, closes: 17 },
    { days: { week: [0, 1, 2, 3, 4] }, opens: 7, closes: 15 },
    { days: weekdays, opens: 22, closes: 6 },
  ],
  clocks: [
    ['utc', 5],
    ['local', 4],
    ['unix-milliseconds', 1],
    ['unix-seconds', 1],
    ['offset', 1],
    ['day-first', 1],
  ],
  jitter: [0.002, 0.06],
  faults: { share: 0.3, rate: [0.0002, 0.004] },
};

/** Ranges held out for judging. */
export const heldOut: Ranges = {
  ...weighing,
  places: heldOutPlaces,
  years: [2025, 2028],
  lobes: [
    ['gaussian', 2],
    ['flat-topped', 3],
    ['skirted', 2],
    ['ringed', 3],
  ],
  lobePower: [1.6, 4],
  lobeTall: [0.6, 1.6],
  lobeLean: [0, 0.25],
  halfAngle: [0.2, 2],
  offset: [0, 0.95],
  separation: [5, 130],
  covered: [0, 0.045],
  units: [
    ['percent', 8],
    ['counts', 4],
    ['millivolts', 4],
    ['decibels', 3],
    ['obscuration', 2],
  ],
  noise: [0.00015, 0.008],
  wander: [0, 0.5],
  tails: [0, 0.06],
  heatNoise: [0, 0.03],
  shimmer: [1, 2.1],
  ageing: [0, 0.6],
  temperatureCoefficient: [0, 0.04],
  warmUp: [0, 0.9],
  solarGain: [0.004, 0.04],
  thermometerLag: [0.05, 4.5],
  structureLag: [0.4, 7],
  strength: [0.75, 18],
  dirtRate: [0.01, 0.7],
  dirtGrows: [
    ['decibels', 2],
    ['obscuration', 1],
  ],
  dirtUneven: [0.1, 1],
  cleaningLeaves: [0, 0.5],
  knockLoss: [0.014, 0.65],
  creepLoss: [0.02, 0.5],
  creepPower: [0.7, 2.4],
  swing: [0.012, 0.3],
  blockDepth: [0.05, 1],
  filmDepth: [0.07, 3],
  filmNights: [0.15, 0.95],
  filmDries: [0.5, 3.5],
  aerosolDepth: [0.09, 3],
  aerosolActive: [0.3, 1],
  aerosolRagged: [0.04, 0.45],
  lightAdds: [0.018, 0.5],
  lightRough: [0, 0.6],
  vibrationHertz: [0.15, 45],
  vibrationSwing: [0.015, 0.3],
  noiseTimes: [2, 25],
  noiseMost: 0.06,
  smokeGrowth: [15, 9000],
  smokePeak: [0.22, 22],
  smokeClears: [200, 14000],
  smokeDither: [0.02, 0.28],
  gainControl: { share: 0.1, hours: [8, 300], limit: [0.6, 6] },
  calendars: [
    { days: weekdays, opens: 5.5, closes: 13.5 },
    { days: { week: [1, 2, 3, 4] }, opens: 8, closes: 18.5 },
    { days: { week: [1, 2, 3, 4, 5, 6] }, opens: 6, closes: 18 },
    { days: { week: [3, 4, 5, 6, 0] }, opens: 9, closes: 18 },
    { days: { week: [6, 0, 1, 2, 3] }, opens: 7.5, closes: 15.5 },
    { days: { on: 4, off: 4 }, opens: 6, closes: 18 },
    { days: { on: 5, off: 2 }, opens: 14, closes: 23 },
    { days: weekdays, opens: 20, closes: 4 },
  ],
  clocks: [
    ['utc', 3],
    ['local', 4],
    ['unix-milliseconds', 1],
    ['unix-seconds', 1],
    ['offset', 2],
    ['day-first', 2],
    ['month-first', 1],
  ],
  jitter: [0.001, 0.12],
  faults: { share: 0.4, rate: [0.0002, 0.008] },
};

/** The range sets by name. */
export const rangeSets = { weighing, 'held-out': heldOut } as const;
/** Name of one of `rangeSets`. */
export type RangeSet = keyof typeof rangeSets;
