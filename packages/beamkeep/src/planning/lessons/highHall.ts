import { decibelsToPercent, specificExtinction } from '../../attenuation/index.js';
import { pointAlarm, usualDiameter, usualWavelength } from '../../numbers/index.js';
import {
  ceilingJet,
  convective,
  fuelNamed,
  growthCoefficient,
  jetExtinction,
  leftOut,
  riseHeight,
  type SmokeScene,
  smokeOnBeam,
  squaredFire,
  whoDecides,
} from '../../smoke/index.js';
import { firstHeld } from '../tradeOff/firstHeld.js';
import { figure, type Lesson, type SettingsOf } from './lesson.js';

/** Sliders of the lesson. */
export const highHallControls = [
  { name: 'height', words: 'height of the hall', unit: 'm', low: 8, high: 30, step: 1, value: 20 },
  { name: 'gradient', words: 'air grows warmer with height by', unit: 'K/m', low: 0, high: 2, step: 0.1, value: 0.8 },
  { name: 'lower', words: 'height of the lower row', unit: 'm', low: 4, high: 20, step: 0.5, value: 8 },
  {
    name: 'growthTime',
    words: 'growth time of the fire to 1055 kW',
    unit: 's',
    low: 75,
    high: 600,
    step: 25,
    value: 300,
  },
] as const;

const watched = 900;
const threshold = 35;
const delay = 10;
/** Fire from the plane of the nearest beam [m]: a quarter of the distance between beams of the upper row. */
const aside = { roof: 3.75, lower: 1 } as const;

/**
 * A high hall: warm air under the roof stops the smoke below the beams until the fire has grown.
 *
 * Foam burns in a hall of 1800 m2 with reflective beams of 60 m; the lower row stands so close that the plume meets one
 * of its beams. Source: NFPA 92 (from memory) for the height at which a plume stops.
 */
export function highHall({ height, gradient, lower, growthTime }: SettingsOf<typeof highHallControls>): Lesson {
  const fire = squaredFire({ coefficient: growthCoefficient(growthTime) }, fuelNamed('polyurethaneFoam'));
  const specific = specificExtinction('flaming', usualWavelength.value);
  const scene = (at: number, beside: number): SmokeScene => ({
    fire,
    diameter: usualDiameter.value,
    ceiling: height,
    area: 1800,
    gradient,
    beam: { layout: 'reflective', separation: 60, height: Math.min(at, height - 0.3), aside: beside },
    specificExtinction: specific,
  });
  const roof = smokeOnBeam(scene(height - 0.3, aside.roof), watched);
  const low = smokeOnBeam(scene(lower, aside.lower), watched);
  const alarm = (curve: typeof roof): number => firstHeld(curve.decibels.map(decibelsToPercent), threshold, delay);
  const [first, second] = [alarm(low), alarm(roof)];
  const told = (seconds: number): string =>
    Number.isFinite(seconds)
      ? `after ${figure(seconds)} s, at ${figure(fire.heat(seconds))} kW`
      : `not within ${watched} s`;
  const stops = gradient > 0 ? riseHeight(convective(fire.fuel, fire.heat(60)), gradient) : Number.POSITIVE_INFINITY;
  return {
    title: 'A high hall and its warm air',
    question: 'Beams at the roof, or a row half way up as well?',
    answer:
      `The roof row finds this fire ${told(second)}; the lower row ${told(first)}. ` +
      (stops < height
        ? `A minute after ignition the smoke stops at ${figure(stops)} m and spreads there; the roof sees it once the fire is large enough to break through. `
        : 'The smoke reaches the roof from the first minute on. ') +
      `${pointTold(second, fire.heat(Math.min(second, watched)), height, specific)} ` +
      'A lower row helps only where its beams stand so close that the narrow plume must cross one; at the roof the smoke has spread.',
    x: { words: 'after ignition', unit: 's' },
    y: { words: 'obscuration', unit: '%' },
    series: [
      { name: 'roof row', x: roof.seconds, y: roof.decibels.map(decibelsToPercent) },
      { name: `row at ${figure(lower)} m`, x: low.seconds, y: low.decibels.map(decibelsToPercent) },
    ],
    lines: [{ words: `alarm at ${threshold} %`, y: threshold }],
    leftOut: [...leftOut, whoDecides],
  };

  /** What a point detector at the roof would see when the beam alarms. */
  function pointTold(seconds: number, heat: number, ceiling: number, extinction: number): string {
    if (!Number.isFinite(seconds)) return '';
    const feed = { convectiveHeat: convective(fire.fuel, heat), smokeRate: fire.smoke(seconds) };
    const perMetre = decibelsToPercent((10 / Math.LN10) * jetExtinction(feed, ceiling, aside.roof, extinction));
    const { speed } = ceilingJet(heat, ceiling, aside.roof);
    const verdict = perMetre < pointAlarm.value ? 'still wait for' : 'be past';
    return `A point detector there would see ${figure(perMetre)} %/m by then and ${verdict} its ${pointAlarm.value} %/m, in air of ${figure(speed)} m/s that must first fill its chamber.`;
  }
}
