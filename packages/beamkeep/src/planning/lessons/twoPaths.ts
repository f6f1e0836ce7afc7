import { converted, decibelsToPercent, extinctionAt, visibility } from '../../attenuation/index.js';
import { laboratoryWavelength, usualWavelength } from '../../numbers/index.js';
import { whoDecides } from '../../smoke/index.js';
import { figure, type Lesson, type SettingsOf, spaced } from './lesson.js';

/** Sliders of the lesson. */
export const twoPathsControls = [
  { name: 'threshold', words: 'alarm threshold', unit: '%', low: 10, high: 70, step: 5, value: 35 },
  { name: 'short', words: 'short optical path', unit: 'm', low: 5, high: 60, step: 5, value: 20 },
  { name: 'long', words: 'long optical path', unit: 'm', low: 40, high: 200, step: 10, value: 160 },
] as const;

/**
 * One threshold on two path lengths: the same percentage is far thicker smoke on the short one.
 *
 * Source: Beer-Lambert; a reflective beam's optical path is twice its separation.
 */
export function twoPaths({ threshold, short, long }: SettingsOf<typeof twoPathsControls>): Lesson {
  const density = (path: number): number => converted(threshold, 'percent', 'decibels-per-metre', path);
  const seen = (path: number): number => {
    const infrared = converted(threshold, 'percent', 'extinction-per-metre', path);
    return visibility(extinctionAt(infrared, usualWavelength.value, laboratoryWavelength.value));
  };
  const smoke = spaced(0, 1.5 * density(short), 121);
  const curve = (path: number) => ({
    name: `${figure(path)} m`,
    x: smoke,
    y: smoke.map((perMetre) => decibelsToPercent(perMetre * path)),
  });
  const times = long / short;
  return {
    title: 'One threshold on two path lengths',
    question: `A threshold of ${figure(threshold)} % on a path of ${figure(short)} m and on one of ${figure(long)} m: is it the same smoke?`,
    answer:
      `No. Smoke that fills the path alarms at ${figure(density(short))} dB/m over ${figure(short)} m, but at ${figure(density(long))} dB/m over ${figure(long)} m: ` +
      `${figure(times)} times thinner. One would still see ${figure(seen(short))} m far in the first, ${figure(seen(long))} m in the second (reflecting signs). ` +
      'So a threshold is chosen for the length: sensitive enough on a short beam, not so fine on a long one that dust alarms it. ' +
      'But a plume that is narrower than both paths hides the same from both: a long path helps only against smoke that has spread.',
    x: { words: 'smoke along the whole path', unit: 'dB/m' },
    y: { words: 'obscuration', unit: '%' },
    series: [curve(short), curve(long)],
    lines: [{ words: `alarm at ${figure(threshold)} %`, y: threshold }],
    leftOut: ['Smoke is even along the path here; near the fire it is not.', whoDecides],
  };
}
