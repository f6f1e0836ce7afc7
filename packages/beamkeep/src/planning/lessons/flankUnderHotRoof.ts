import { decibelsToPercent, percentToDecibels } from '../../attenuation/index.js';
import { lobeLoss } from '../../optics/index.js';
import { whoDecides } from '../../smoke/index.js';
import { figure, type Lesson, type SettingsOf, spaced } from './lesson.js';

/** Sliders of the lesson. */
export const flankUnderHotRoofControls = [
  { name: 'offset', words: 'aim off the peak', unit: 'of the half-angle', low: 0, high: 1, step: 0.05, value: 0.5 },
  {
    name: 'movement',
    words: 'movement of the roof, up and down',
    unit: 'of the half-angle',
    low: 0,
    high: 0.6,
    step: 0.05,
    value: 0.3,
  },
  { name: 'threshold', words: 'alarm threshold', unit: '%', low: 10, high: 70, step: 5, value: 35 },
] as const;

/** Hour at which a sun-heated roof stands highest. */
const hottest = 15;

/**
 * A beam on the flank under a hot roof: the same movement costs many times more than at the peak.
 *
 * The roof moves as a sine of the day; the level was made 100 % when it stood in its middle.
 * Source: lobe loss 3.01 (angle/half-angle)^2 dB, from the definition of half power.
 */
export function flankUnderHotRoof({
  offset,
  movement,
  threshold,
}: SettingsOf<typeof flankUnderHotRoofControls>): Lesson {
  const hours = spaced(0, 48, 193);
  const day = (aim: number): Float64Array =>
    hours.map((hour) => {
      const moved = movement * Math.cos((2 * Math.PI * (hour - hottest)) / 24);
      return decibelsToPercent(lobeLoss(aim + moved, 1) - lobeLoss(aim, 1));
    });
  const [flank, peak] = [day(offset), day(0)];
  const [worst, centred] = [Math.max(...flank), Math.max(...peak)];
  const left = decibelsToPercent(Math.max(0, percentToDecibels(threshold) - percentToDecibels(worst)));
  const alarms =
    worst >= threshold
      ? 'That is the alarm threshold: the sun alone gives an alarm on a hot day.'
      : `${figure(left)} % of smoke then alarms instead of ${figure(threshold)} %.`;
  const dips =
    offset > movement
      ? 'One dip a day: the sign of a beam on the flank.'
      : 'Two dips a day, or nearly: the sign of a beam that is aimed at its peak.';
  return {
    title: 'A beam on the flank under a hot roof',
    question:
      'Two beams hang under the same roof, one aimed at the peak, one at the flank of its lobe. What does the sun do to each?',
    answer:
      `Off the peak by ${figure(offset)} of the half-angle the beam loses up to ${figure(worst)} % in the heat, at the peak ${figure(centred)} %. ${alarms} ${dips} ` +
      'The roof cannot be stopped, but the aim can be mended: find the peak by a scan, not by the first good reading.',
    x: { words: 'hour', unit: 'h' },
    y: { words: 'obscuration that the equipment sees', unit: '%' },
    series: [
      { name: `${figure(offset)} of the half-angle off`, x: hours, y: flank },
      { name: 'at the peak', x: hours, y: peak },
    ],
    lines: [{ words: `alarm at ${figure(threshold)} %`, y: threshold }],
    leftOut: [
      'Movement of one axis, a sine of the day; real roofs follow sun and wind. Beyond the half-angle real lobes fall more steeply.',
      whoDecides,
    ],
  };
}
