import type { Beam } from '../../site/index.js';
import { figure } from '../words/figure.js';
import type { CoveredTest } from './coveredTest.js';
import type { Reach } from './reach.js';

/** What a covered test means, in words. */
export interface CoveredWords {
  /** The worse of what the two thresholds get. */
  readonly verdict: Reach['verdict'];
  /** Sentences for a person, the pressing ones first. */
  readonly sentences: readonly string[];
  /** What to do about it, in order. */
  readonly actions: readonly string[];
}

const percent = (value: number): string => `${figure(value)} %`;

function smokeSentence(reach: Reach, largest: number): string | undefined {
  const { threshold, reachable, trueObscuration, decibels, trueDecibels, timesTheSmoke, verdict } = reach;
  if (reachable === 'no')
    return (
      `No smoke can raise the alarm: the threshold is ${percent(threshold)}, and this beam can never read more than ` +
      `${percent(largest)}.`
    );
  if (reachable === 'doubtful')
    return (
      `It is not certain that smoke can raise the alarm: the threshold is ${percent(threshold)}, and the most that ` +
      `this beam can read is ${percent(largest)}, known no better than this test allows.`
    );
  if (verdict === 'fit') return undefined;
  return (
    `The alarm threshold says ${percent(threshold)} and needs ${percent(trueObscuration)} of true obscuration: ` +
    `${figure(trueDecibels)} dB instead of ${figure(decibels)} dB, ${figure(timesTheSmoke, 2)} times the smoke.`
  );
}

function blockSentence({ threshold, reachable }: Reach, largest: number): string | undefined {
  if (reachable === 'yes') return undefined;
  return (
    `A blocked beam ${reachable === 'no' ? 'will not' : 'may not'} be told as a fault: the fault threshold is ` +
    `${percent(threshold)}, and with the beam gone the most that can be read is ${percent(largest)}.`
  );
}

function driftSentence({ drift }: CoveredTest): string | undefined {
  if (drift === undefined)
    return 'One of the two clean stretches is missing, so nobody can say whether the light wandered during the test.';
  if (!drift.tells) return undefined;
  return (
    `The clean reading ${drift.percent > 0 ? 'rose' : 'fell'} by ${percent(Math.abs(drift.percent))} ` +
    `(${figure(drift.low)} to ${figure(drift.high)} %) from before the cover to after it.`
  );
}

/**
 * What a covered test means for a beam, in words that a person can act on.
 *
 * @param test from `coveredTest`
 * @param beam the same beam of the site
 */
export function coveredWords(test: CoveredTest, beam: Pick<Beam, 'coveredSubtracted'>): CoveredWords {
  const { alarm, fault, ratio, ratioLow, ratioHigh, largestObscuration: largest, drift } = test;
  const verdicts = [alarm.verdict, fault.verdict];
  const verdict = verdicts.includes('refuse') ? 'refuse' : verdicts.includes('caution') ? 'caution' : 'fit';
  const smoke = smokeSentence(alarm, largest);
  const block = blockSentence(fault, largest);
  const wandered = driftSentence(test);
  const residue =
    `Covered, the beam still reads ${percent(100 * ratio)} of its clean reading ` +
    `(95 % limits ${figure(100 * Math.max(ratioLow, 0))} to ${figure(100 * ratioHigh)} %)`;
  const sentences = [
    smoke,
    block,
    beam.coveredSubtracted
      ? `${residue}. The equipment takes that off before it compares: true as long as this light stays as it is.`
      : `${residue}, so it can never read more than ${percent(largest)} obscuration.`,
    wandered,
  ];
  const light =
    'Find what comes back without the beam (a window, a shiny duct, dust on the window of the head) and take it away, or aim past it.';
  const actions = [
    ...(verdict === 'fit' ? [] : [light, 'Then cover again. Until it is mended this beam counts as out of service.']),
    ...(verdict !== 'refuse' || beam.coveredSubtracted
      ? []
      : [
          "Where the maker's instructions let the equipment take the covered reading off, have that done, and say so in the site file (coveredSubtracted).",
        ]),
    ...(drift === undefined ? ['Repeat the test with half a minute of clean air on both sides of the cover.'] : []),
    ...(drift?.tells
      ? [
          'See what moved: a head or reflector touched while it was covered, a head still warming up, light from outside. Check the aim, then repeat.',
        ]
      : []),
  ];
  return { verdict, sentences: sentences.filter((sentence) => sentence !== undefined), actions };
}
