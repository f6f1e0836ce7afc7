import { blockedWithin } from '../../numbers/index.js';
import { filterLoss } from '../../optics/index.js';
import type { Change } from '../../response/index.js';
import type { Beam } from '../../site/index.js';
import { figure } from '../words/figure.js';
import type { Excursion, Excursions } from './excursions.js';
import type { ExpectedStep } from './expected.js';
import { lossTaken } from './lossTaken.js';

/** Whether the step took as much light as it should. */
export function amountReasons(
  { step, obscuration }: ExpectedStep,
  excursion: Excursion,
  found: Excursions,
  beam: Beam,
): string[] {
  if (obscuration === undefined) return [];
  const taken = lossTaken(excursion, found, beam);
  const { value, low, high } = obscuration;
  if (taken >= low && taken <= high) return [];
  const once = step.do === 'filter' ? filterLoss(step.transmittance, 1).percent : Number.NaN;
  const why =
    Math.abs(taken - once) <= high - value
      ? 'that is what it takes when the light meets it once, so it covers one of the two lenses only'
      : taken < value
        ? `it did not meet all of the light, or it is thinner at ${figure(beam.wavelength)} nm than it says`
        : `more than it was in the path, or it is denser at ${figure(beam.wavelength)} nm than it says`;
  return [
    `It took ${figure(taken)} % of the light instead of ${figure(value)} % ` +
      `(${figure(Math.max(low, 0))} to ${figure(high)} %): ${why}.`,
  ];
}

/** Whether the signal that must come came, and no other. */
export function signalReasons(
  { step, signal: wanted, state }: ExpectedStep,
  excursion: Excursion,
  signals: readonly Change[],
  { intervalSeconds }: Excursions,
  beam: Beam,
): string[] {
  const [signal] = signals;
  const fire = wanted === 'fire' || state === 'fire' ? undefined : signals.find((came) => came.state === 'fire');
  const stray = fire ?? (wanted === undefined && state !== 'fire' ? signal : undefined);
  if (signal?.state === wanted || wanted === undefined)
    return stray === undefined
      ? []
      : [
          `A ${stray.state} signal came, and none was to come: the largest obscuration was ${figure(excursion.largest)} %.`,
        ];
  const { alarmThreshold, faultThreshold, alarmDelay, faultDelay } = beam;
  const [threshold, delay] = wanted === 'fire' ? [alarmThreshold, alarmDelay] : [faultThreshold, faultDelay];
  const held = wanted === 'fire' ? excursion.alarmHeldSeconds : excursion.faultHeldSeconds;
  const reasons: string[] = [];
  if (excursion.largest < threshold)
    reasons.push(
      `It reached ${figure(excursion.largest)} % at most, and the ${wanted} threshold is ${figure(threshold)} %.`,
    );
  else if (held < delay)
    reasons.push(
      `It stayed beyond ${figure(threshold)} % for ${figure(held)} s, and the delay is ${figure(delay)} s: hold it longer.`,
    );
  else if (wanted === 'fault' && !(excursion.riseSeconds <= blockedWithin.value))
    reasons.push(
      intervalSeconds > blockedWithin.value
        ? `Samples stand ${figure(intervalSeconds)} s apart, so nothing can show that it was covered within ${blockedWithin.value} s.`
        : `It took ${figure(excursion.riseSeconds)} s to cover the beam: more than ${blockedWithin.value} s is not a blocked beam but smoke.`,
    );
  else if (step.do === 'cover-slowly' && excursion.riseSeconds <= blockedWithin.value)
    reasons.push(
      `It took only ${figure(excursion.riseSeconds)} s: within ${blockedWithin.value} s it is a blocked beam, not smoke. Draw it slower.`,
    );
  reasons.push(
    signal === undefined
      ? `No ${wanted} signal was due.`
      : `The signal due was ${signal.state}, and it had to be ${wanted}.`,
  );
  return reasons;
}
