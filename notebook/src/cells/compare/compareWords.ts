import type { BeamStanding, Change, ComparedBeam, ComparedFinding, FindingFate } from 'beamkeep/diagnosis';
import { causeHeading } from '../../words/causes.js';
import { counted, figure } from '../../words/numbers.js';

/*
 * What a comparison of two logs says, in sentences. That something was not seen after a visit is never said to prove
 * that it is gone for good, and of smoke it is not said at all.
 */

/** "0.31 dB (four pairs of days in five: -1.9 to -1.6)". */
export function changeInWords({ before, after, change, low, high, clear }: Change, unit: string): string {
  if (Number.isNaN(change)) return 'not to be told';
  return `${figure(before, 2)} to ${figure(after, 2)} ${unit}: ${signed(change)} (${signed(low)} to ${signed(high)})${clear ? '' : ', not clear'}`;
}

/** A number with its sign. */
export const signed = (value: number): string =>
  `${value > 0 ? '+' : value < 0 ? '−' : ''}${figure(Math.abs(value), 2)}`;

/** A value with its limits: "0.59 (0.5 to 0.7)". */
const limited = ({
  value,
  low,
  high,
}: {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}): string => `${signed(value)} (${signed(low)} to ${signed(high)})`;

const days = (count: number): string => `${counted(count)} ${count === 1 ? 'day' : 'days'}`;

/** Growth or fall of the noise that is worth a word. */
const loud = 1.5;

/** What changed on a beam, in sentences. */
export function compareSentences(beam: ComparedBeam): string[] {
  const { id, loss, margin, swing, swingPerKelvin, noise, aim, daysBefore, daysAfter } = beam;
  const since = beam.steppedBefore ? ', since its last step,' : '';
  const until = beam.steppedAfter ? ', until its next step' : '';
  if (daysBefore === 0 || daysAfter === 0)
    return [
      `Beam ${id}: ${daysBefore === 0 ? 'the log before' : 'the log after'} holds no usable day of it, so nothing can be compared.`,
    ];
  const words = [
    `Beam ${id}, the last ${days(daysBefore)} before${since} against the first ${days(daysAfter)} after${until}: ${levelWords(loss)}`,
    `At its daily low ${figure(margin.after, 2)} dB are left to the alarm threshold; before it was ${figure(margin.before, 2)} dB${margin.clear ? '' : ', no clear change'}.`,
    swingWords(swing, swingPerKelvin),
  ];
  if (noise.ratio > loud || noise.ratio < 1 / loud)
    words.push(
      `Single samples spread by ${figure(noise.after, 2)} % now, ${figure(noise.before, 2)} % before: ${
        noise.ratio > 1 ? 'noisier: look at supply, plugs and light on the receiver.' : 'quieter.'
      }`,
    );
  if (aim.before && aim.after)
    words.push(
      `Read from heat and movement, the aim stood ${limited(aim.before.offset)} of the half-angle off its peak before and stands ${limited(aim.after.offset)} off now; the sign is towards warmer.`,
    );
  return [...words, ...fateWords(beam.findings, daysAfter)];
}

function levelWords({ before, after, change, clear }: Change): string {
  const from = `it loses ${figure(Math.max(0, after), 2)} dB on a usual day, before it was ${figure(Math.max(0, before), 2)} dB`;
  if (!clear) return `${from}: no clear change.`;
  return change < 0
    ? `${from}: ${figure(-change, 2)} dB are won.`
    : `${from}: ${figure(change, 2)} dB more are lost now.`;
}

function swingWords(swing: Change, perKelvin: Change): string {
  const of = `It swings ${figure(swing.after, 2)} dB a day, before it was ${figure(swing.before, 2)} dB`;
  if (!Number.isNaN(perKelvin.change)) {
    const kelvin = `by the kelvin that is ${figure(perKelvin.after, 2)} against ${figure(perKelvin.before, 2)} dB/K, so the weather ${
      perKelvin.clear === swing.clear ? 'is not what' : 'may be what'
    } makes the difference`;
    return swing.clear ? `${of}; ${kelvin}.` : `${of}: no clear change.`;
  }
  return swing.clear
    ? `${of}. The structure’s temperature is not logged in both: other weather can do that too.`
    : `${of}: no clear change.`;
}

/** What became of a cause, as a word for the table. */
export const fateInWords: Readonly<Record<FindingFate, string>> = {
  stayed: 'stayed',
  new: 'new',
  gone: 'gone',
  unseen: 'not seen',
};

function fateWords(findings: readonly ComparedFinding[], after: number): string[] {
  const named = (fate: FindingFate): string =>
    findings
      .filter((one) => one.fate === fate && one.cause !== 'smoke-like')
      .map(({ cause }) => causeHeading(cause).toLowerCase())
      .join(', ');
  const said = (fate: FindingFate, words: (causes: string) => string): string[] => {
    const causes = named(fate);
    return causes ? [words(causes)] : [];
  };
  const smoke = findings.find(({ cause }) => cause === 'smoke-like');
  return [
    ...said('gone', (causes) => `Gone, though it should have come again by now: ${causes}.`),
    ...said('unseen', (causes) => `Not seen in the ${days(after)} after, too few to call it gone: ${causes}.`),
    ...said('stayed', (causes) => `Still there: ${causes}.`),
    ...said('new', (causes) => `New: ${causes}.`),
    ...(smoke === undefined
      ? []
      : [
          smoke.after
            ? 'What cannot be told from smoke stands in the log after: treat it as fire.'
            : 'What cannot be told from smoke stands in the log before and not in the one after: that does not say what it was.',
        ]),
  ];
}

/** Beams of the one log that the other does not have. */
export function unmatched(before: readonly BeamStanding[], after: readonly BeamStanding[]): string[] {
  const missing = (of: readonly BeamStanding[], other: readonly BeamStanding[]): string =>
    of
      .filter(({ id }) => !other.some((one) => one.id === id))
      .map(({ id }) => id)
      .join(', ');
  const [onlyBefore, onlyAfter] = [missing(before, after), missing(after, before)];
  return [
    ...(onlyBefore ? [`Only in the log before: ${onlyBefore}.`] : []),
    ...(onlyAfter ? [`Only in the log after: ${onlyAfter}.`] : []),
  ];
}
