import { reached } from '../response/index.js';
import type { BeamThen } from './beamThen.js';
import { type Cover, longest, type Told } from './covering.js';
import type { EntryKind } from './entryKind.js';
import { hidesBlocks } from './expectedSignals.js';
import { lengthInWords, percent, sentence } from './wording.js';

/** Light above clean air that is worth a word [%]. */
const worthAWord = 5;

/**
 * What the log shows at an event, in sentences: whether it agrees, what the light did, which finding lies there.
 *
 * @param kind of the event
 * @param then the beam at that time
 */
export function eventWords(kind: EntryKind, then: BeamThen<Told>): string {
  return [signalWords(kind, then), coverWords(then)].filter((words) => words !== '').join(' ');
}

function signalWords(kind: EntryKind, then: BeamThen<Told>): string {
  const { state, place, beam, intervalSeconds } = then;
  if (place === 'before') return 'The log begins later.';
  if (place === 'after') return 'The log ends before.';
  if (state === undefined) return 'The log holds no sample then.';
  const light = lightWords(then);
  if (kind === 'fire' && state === 'fire') return `The log agrees: ${light}, and the settings give fire.`;
  if (kind === 'fault' && state === 'fault') return `The log agrees: ${light}, and the settings give fault.`;
  if (
    kind === 'fault' &&
    state === 'fire' &&
    hidesBlocks(intervalSeconds) &&
    reached(then.greatest, beam.faultThreshold)
  ) {
    const apart = lengthInWords(1000 * intervalSeconds);
    return `The log shows a total loss: ${light}. With samples ${apart} apart it cannot show that the loss came as fast as a blocked beam does, so the settings give fire.`;
  }
  if (kind === 'reset') {
    return state === 'fire'
      ? `The log shows the loss still standing: ${light}; the alarm threshold is ${percent(beam.alarmThreshold)}.`
      : `After it the settings give ${state}: ${light}.`;
  }
  if (kind === 'other') return `The settings give ${state}: ${light}.`;
  const [signal, threshold, delay] =
    kind === 'fire'
      ? ['fire', `the alarm threshold is ${percent(beam.alarmThreshold)}`, beam.alarmDelay]
      : ['blocked beam', `the fault threshold is ${percent(beam.faultThreshold)}`, beam.faultDelay];
  const unseen =
    intervalSeconds > delay
      ? ` Samples stand ${lengthInWords(1000 * intervalSeconds)} apart: a shorter loss would not show.`
      : '';
  const bright =
    kind === 'fault' && then.least <= -worthAWord
      ? ' Light above clean air is no loss; some equipment calls it a fault.'
      : '';
  return `The log shows no ${signal} then (the settings give ${state}): ${light}; ${threshold}.${bright}${bright === '' ? unseen : ''}`;
}

/** The light about that time, and how far it went while the clocks may be off. */
function lightWords({ obscuration, least, greatest, within }: BeamThen<Told>): string {
  const about = `at most within ${lengthInWords(within)}`;
  const now =
    obscuration < 0 ? `level ${percent(-obscuration)} above clean air` : `obscuration ${percent(obscuration)}`;
  if (greatest > worthAWord && greatest - obscuration > 3) return `${now} (obscuration ${percent(greatest)} ${about})`;
  if (least < -worthAWord && obscuration - least > 3) return `${now} (${percent(-least)} above clean air ${about})`;
  return now;
}

/** The finding that says most; beside smoke the next one too. */
function coverWords({ covers, at, place }: BeamThen<Told>): string {
  const [first, second] = covers;
  if (first === undefined) return place === 'within' ? 'No finding lies near.' : '';
  const told = ({ finding, start, end }: Cover<Told>) => {
    const away = Math.max(0, start - at, at - end);
    const sure = `${finding.cause} (${Math.round(100 * finding.confidence)} %)`;
    return `${away > 0 ? `Nearest, ${lengthInWords(away)} away: ` : ''}${sure}: ${sentence(finding.summary)}`;
  };
  const beside =
    first.finding.cause === 'smoke-like' && second?.away === 0 && second.end - second.start <= longest
      ? [`Beside it, ${told(second)}`]
      : [];
  return [told(first), ...beside].join(' ');
}
