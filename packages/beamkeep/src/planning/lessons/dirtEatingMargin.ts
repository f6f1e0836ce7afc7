import { decibelsToPercent, percentToDecibels } from '../../attenuation/index.js';
import { whoDecides } from '../../smoke/index.js';
import { figure, type Lesson, type SettingsOf, spaced } from './lesson.js';

/** Sliders of the lesson. */
export const dirtEatingMarginControls = [
  { name: 'threshold', words: 'alarm threshold', unit: '%', low: 10, high: 70, step: 5, value: 35 },
  { name: 'perDay', words: 'dirt a day', unit: '%/day', low: 0.02, high: 0.6, step: 0.02, value: 0.12 },
  { name: 'days', words: 'days since the last cleaning', unit: 'days', low: 0, high: 365, step: 5, value: 180 },
] as const;

/**
 * Dirt eating margin: without compensation a dirty beam needs less and less smoke, until it needs none.
 *
 * What is lost a day is a share of what is left, so dirt adds evenly in decibels.
 * Source: derived; losses of dirt and smoke add in decibels.
 */
export function dirtEatingMargin({ threshold, perDay, days }: SettingsOf<typeof dirtEatingMarginControls>): Lesson {
  const budget = percentToDecibels(threshold);
  const daily = percentToDecibels(perDay);
  const smoke = (day: number): number => decibelsToPercent(Math.max(0, budget - daily * day));
  const gone = budget / daily;
  const span = spaced(0, Math.max(365, Math.ceil(gone)), 147);
  const answer =
    smoke(days) > 0
      ? `After ${figure(days)} days dirt has taken ${figure(decibelsToPercent(daily * days))} % of the light. ${figure(smoke(days))} % of smoke now alarms at the threshold of ${figure(threshold)} %: ` +
        `the beam has become more sensitive than it was set, and dust and mist alarm it sooner. After ${figure(gone)} days it alarms without any smoke.`
      : `Dirt alone has passed the threshold: the beam alarmed without any smoke after ${figure(gone)} days.`;
  return {
    title: 'Dirt eating the margin',
    question: 'What does a dirty reflector do to a beam without compensation: blind it, or make it nervous?',
    answer: `${answer} Clean it before half the margin is gone. Equipment that compensates hides this, up to its limit, and then gives a fault.`,
    x: { words: 'days since the last cleaning', unit: 'days' },
    y: { words: 'smoke that alarms', unit: '%' },
    series: [{ name: 'smoke that alarms', x: span, y: span.map(smoke) }],
    lines: [{ words: `alarm at ${figure(threshold)} % when clean`, y: threshold }],
    leftOut: ['Dirt falls evenly here; real dirt comes in bursts and with the work.', whoDecides],
  };
}
