import { flankLoss } from '../../numbers/index.js';
import type { Estimate, ScanFlag } from '../../optics/index.js';
import { figure, listed } from '../words/figure.js';
import type { AimMargin } from './aimMargin.js';
import type { StructureMove } from './structureMoves.js';

/** What an aim scan means, in words. */
export interface AimWords {
  /** `look again`: the scan shows more than one clean lobe, or the aim stands on its flank. */
  readonly verdict: 'good' | 'look again' | 'not known';
  readonly sentences: readonly string[];
  readonly actions: readonly string[];
}

/** What the words are drawn from. */
export interface AimFacts {
  /** Names of the axes. */
  readonly axes: readonly string[];
  readonly flags: readonly ScanFlag[];
  /** Loss where the head was left [dB]; undefined where nobody told. */
  readonly loss: Estimate | undefined;
  /** Turn off the peak where it was left, one an axis [degrees]. */
  readonly offset: readonly Estimate[];
  readonly halfAngle: readonly Estimate[];
  readonly alarm: AimMargin;
  readonly moves: readonly StructureMove[];
}

/** Angles in words, one an axis: where there are two, each says which it is. */
const turns = (angles: readonly number[], axes: readonly string[]): string =>
  listed(angles.map((angle, k) => `${figure(angle)} degrees${angles.length > 1 ? ` (${axes[k]})` : ''}`));

const share = (size: number): string => `${figure(100 * size)} % of the peak`;

/**
 * One doubt about a scan, as a sentence.
 *
 * @param axes names of the axes
 */
export function flagWords({ kind, at, size }: ScanFlag, axes: readonly string[]): string {
  const place = at === undefined ? '' : ` at ${turns(at, axes)}`;
  switch (kind) {
    case 'second-peak':
      return `A second peak stands${place}, ${share(size)} above the lobe: a stray reflection, or the lobe is not that of the reflector.`;
    case 'shoulder':
      return `The flank${place} stands ${share(size)} too high: a reflection that overlaps the lobe.`;
    case 'raised-floor':
      return `Far off the peak ${share(size)} comes back that the covered reading does not explain.`;
    case 'clipped':
      return `The top of the lobe is cut off: the receiver is saturated, the true peak lies some ${share(size)} higher.`;
    case 'few-points':
      return `Only ${figure(size)} readings: too few to tell this lobe from another shape.`;
    case 'peak-not-crossed':
      return 'The scan did not cross the peak: the level does not fall on both sides of it.';
    case 'noisy':
      return `The readings scatter by ${share(size)}: the centre is in doubt.`;
  }
}

const flagActions: Readonly<Record<ScanFlag['kind'], string>> = {
  'second-peak':
    'Cover the reflector and scan again: a peak that stays is not the reflector. Take the shiny thing away, or aim past it.',
  shoulder: 'Cover the reflector and scan again: what stays is the stray reflection. Screen it, then scan once more.',
  'raised-floor': 'Do the covered test: it measures the light that does not come by the beam.',
  clipped: 'Lower the gain, or follow the maker for a strong return, and scan again.',
  'few-points': 'Scan again in steps of a quarter of the half-angle or less.',
  'peak-not-crossed': 'Scan again, further, until the level has fallen well below half on both sides.',
  noisy: 'Let it stand at each place for a few samples, and look for what makes the readings scatter.',
};

/**
 * What an aim scan means, in words that a person can act on.
 *
 * @param facts from the fit and its margins
 */
export function aimWords(facts: AimFacts): AimWords {
  const { axes, flags, loss, offset, halfAngle, alarm, moves } = facts;
  const onFlank = loss !== undefined && loss.value >= flankLoss.value;
  const grave = flags.filter(({ kind }) => kind !== 'raised-floor' && kind !== 'few-points');
  const verdict = flags.length > 0 || onFlank ? 'look again' : loss === undefined ? 'not known' : 'good';
  const turn = turns(
    offset.map(({ value }) => Math.abs(value)),
    axes,
  );
  const width = turns(
    halfAngle.map(({ value }) => value),
    axes,
  );
  const sentences = [
    ...flags.map((flag) => flagWords(flag, axes)),
    loss === undefined
      ? 'Where the head was left is not told, so its loss and its margin are those of a head on the peak.'
      : onFlank
        ? `The head was left on the flank: ${turn} off the peak, which costs ${figure(loss.value)} dB ` +
          `(${figure(loss.low)} to ${figure(loss.high)}).`
        : `The head was left ${turn} off the peak: ${figure(loss.value)} dB ` +
          `(${figure(loss.low)} to ${figure(loss.high)}).`,
    `The received level halves ${width} off the peak.`,
    marginSentence(alarm, loss !== undefined),
    ...moves.filter((move) => move.verdict !== 'within').map(moveSentence),
  ];
  const actions = [
    ...new Set(flags.map(({ kind }) => flagActions[kind])),
    ...(onFlank
      ? [
          grave.length > 0
            ? 'Aim on the peak only once it is certain that it is that of the reflector.'
            : `Aim on the peak and scan again: it wins ${figure(loss.value)} dB now, and more at the far end of every movement.`,
        ]
      : []),
    ...(moves.some((move) => move.verdict === 'beyond' || move.verdict === 'tight')
      ? ['Ask the structural engineer how far this structure moves, or fix the head to a part that moves less.']
      : []),
  ];
  return { verdict, sentences, actions };
}

function marginSentence({ threshold, degrees, millimetres, degreesOnPeak }: AimMargin, left: boolean): string {
  if (!Number.isFinite(degrees.value))
    return `No turn of the head ever reads ${figure(threshold)} %: what comes back without the beam is too much.`;
  const onPeak = left ? `; on the peak it would be ${figure(degreesOnPeak)} degrees` : '';
  return (
    `It may turn ${figure(degrees.value)} degrees (${figure(Math.max(degrees.low, 0))} to ${figure(degrees.high)}) before it ` +
    `reads ${figure(threshold)} %: ${figure(millimetres.value)} mm at the far end${onPeak}.`
  );
}

function moveSentence({ what, degrees, share: used, verdict }: StructureMove): string {
  if (verdict === 'not known') return `${capital(what)} may turn the head by as much as ${figure(degrees)} degrees.`;
  const says = verdict === 'beyond' ? 'more than the margin' : `${figure(100 * used, 2)} % of the margin`;
  return `${capital(what)} may turn the head by as much as ${figure(degrees)} degrees: ${says}.`;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
