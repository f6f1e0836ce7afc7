import { decibelsToPercent, specificExtinction } from '../../attenuation/index.js';
import { usualDiameter, usualWavelength } from '../../numbers/index.js';
import { fuelNamed, growthCoefficient, leftOut, smokeOnBeam, squaredFire, whoDecides } from '../../smoke/index.js';
import { firstHeld } from '../tradeOff/firstHeld.js';
import { figure, type Lesson, type SettingsOf, spaced } from './lesson.js';

/** Sliders of the lesson. */
export const delayAgainstForkLiftControls = [
  { name: 'delay', words: 'alarm delay', unit: 's', low: 0, high: 60, step: 1, value: 10 },
  {
    name: 'passes',
    words: 'passes of the fork-lift a working day',
    unit: '1/day',
    low: 1,
    high: 60,
    step: 1,
    value: 12,
  },
  { name: 'stop', words: 'middle time in the beam', unit: 's', low: 1, high: 20, step: 0.5, value: 3 },
  {
    name: 'growthTime',
    words: 'growth time of the fire to 1055 kW',
    unit: 's',
    low: 75,
    high: 600,
    step: 25,
    value: 150,
  },
] as const;

const workingDays = 250;
const watched = 600;
const longestDelay = 60;
const threshold = 35;

/**
 * Delay against a fork-lift that hides part of the beam: each second fewer nuisance, and a larger fire.
 *
 * A mast hides more than the threshold and less than a blocked beam; times in the beam are exponential about their
 * median, so the share of passes that outlasts a delay is 2^(-delay/median).
 * Source: derived; fire by NFPA 204, wood, 12 m high hall, four metres beside a reflective beam of 60 m.
 */
export function delayAgainstForkLift(settings: SettingsOf<typeof delayAgainstForkLiftControls>): Lesson {
  const { delay, passes, stop, growthTime } = settings;
  const fire = squaredFire({ coefficient: growthCoefficient(growthTime) }, fuelNamed('wood'));
  const { decibels } = smokeOnBeam(
    {
      fire,
      diameter: usualDiameter.value,
      ceiling: 12,
      area: 1800,
      beam: { layout: 'reflective', separation: 60, height: 11.7, aside: 4 },
      specificExtinction: specificExtinction('flaming', usualWavelength.value),
    },
    watched,
  );
  const obscuration = decibels.map(decibelsToPercent);
  const nuisance = (seconds: number): number => passes * workingDays * 2 ** (-seconds / stop);
  const heat = (seconds: number): number => fire.heat(firstHeld(obscuration, threshold, seconds));
  const delays = spaced(0, longestDelay, longestDelay + 1);
  const [now, none] = [heat(delay), heat(0)];
  return {
    title: 'Delay against a fork-lift',
    question: 'Why not set the delay so long that the fork-lift never alarms?',
    answer:
      `With ${figure(delay)} s the mast alarms about ${figure(nuisance(delay))} times a year, without a delay ${figure(nuisance(0))} times. ` +
      `The fire gives ${figure(now)} kW when it is found, ${figure(none)} kW without a delay: ${figure(now / none)} times as much. ` +
      `Each further ${figure(stop)} s halve the nuisance and let the fire grow on. ` +
      'The better cure is often not the delay: a higher beam, or keeping the mast out of its way.',
    x: { words: 'alarm delay', unit: 's' },
    y: { words: 'nuisance alarms a year; fire at alarm in kW', unit: '' },
    series: [
      { name: 'nuisance alarms a year', x: delays, y: delays.map(nuisance) },
      { name: 'fire at alarm, kW', x: delays, y: delays.map(heat) },
    ],
    lines: [],
    leftOut: [...leftOut, whoDecides],
  };
}
