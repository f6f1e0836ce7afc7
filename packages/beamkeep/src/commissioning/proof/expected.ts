import { crossings, percentToLevel } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import { coverTolerance, filterTolerance, quietFilterHold, signalAllowance } from '../../numbers/index.js';
import { coverObscuration, filterLoss, type Lighting } from '../../optics/index.js';
import { type DetectorState, equipmentObscuration, largestObscuration } from '../../response/index.js';
import type { Beam } from '../../site/index.js';
import { figure } from '../words/figure.js';
import type { ProofSheet, ProofStep } from './step.js';

/*
 * What each step of a proof must show, from the settings of the beam alone. The state runs on from step to step: a
 * latched fire stands until a reset, and no fault withdraws it (EN 54-12:2002, 4.10).
 */

/** What a step must show. */
export interface ExpectedStep {
  readonly step: ProofStep;
  /** What to do, in words. */
  readonly words: string;
  /** What the step takes of the light, as a share of what came before [%]; undefined where any amount will do. */
  readonly obscuration: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  /** The signal that must come in this step; undefined where none may. */
  readonly signal: 'fire' | 'fault' | undefined;
  /** Seconds from the moment the condition holds (the threshold reached) to the signal. */
  readonly window: { readonly from: number; readonly to: number } | undefined;
  /** State at the end of the step. */
  readonly state: DetectorState;
  /** How long to hold it, at least [s]; 0 where there is nothing to hold. */
  readonly holdSeconds: number;
  /** Why nothing is proved by this step, whatever it shows, in words. */
  readonly doubts: readonly string[];
  /** What bodes ill, in words. */
  readonly cautions: readonly string[];
}

/** What takes light, as against what is done at the head, the panel or by waiting. */
export const takesLight = (step: ProofStep): boolean =>
  step.do === 'cover-slowly' || step.do === 'cover-at-once' || step.do === 'part-cover' || step.do === 'filter';

const metTwice = (beam: Pick<Beam, 'layout'>, step: Extract<ProofStep, { do: 'filter' }>): 1 | 2 =>
  step.crossings ?? crossings(beam.layout);

/** Share of the light that a step takes [%], and how far a hand may be off. */
function lossOf(step: ProofStep, sheet: ProofSheet, beam: Beam): { value: number; tolerance: number } | undefined {
  if (step.do === 'filter')
    return { value: filterLoss(step.transmittance, metTwice(beam, step)).percent, tolerance: filterTolerance.value };
  if (step.do !== 'part-cover') return undefined;
  if (step.obscuration !== undefined) return { value: step.obscuration, tolerance: coverTolerance.value };
  if (step.millimetres === undefined)
    throw new UsageError('a part-cover step needs "millimetres" or "obscuration": say how much is covered');
  if (sheet.reflector === undefined)
    throw new UsageError('a part-cover step in millimetres needs the "reflector" of the sheet: its shape and size');
  const { reflector } = sheet;
  const half = (reflector.shape === 'round' ? reflector.diameter : reflector.width) / 2;
  const strip =
    step.from === 'middle'
      ? { from: -step.millimetres / 2, to: step.millimetres / 2 }
      : { from: -half, to: step.millimetres - half };
  return { value: coverObscuration(reflector, strip, lightingOf(sheet, beam)), tolerance: coverTolerance.value };
}

/**
 * How a reflector is lit: by the lobe, where that is asked for and the half-angle is known.
 *
 * @throws UsageError where the half-angle is wanted and not known
 */
export function lightingOf(
  { lit }: Pick<ProofSheet, 'lit'>,
  { halfAngle, separation, id }: Pick<Beam, 'halfAngle' | 'separation' | 'id'>,
): Lighting | undefined {
  if (lit !== 'by-the-lobe') return undefined;
  if (halfAngle === undefined)
    throw new UsageError(`beam ${id}: a reflector lit by the lobe needs the beam's halfAngle in the site file`);
  return { halfPowerRadius: 1000 * separation * Math.tan((halfAngle * Math.PI) / 180) };
}

/**
 * What each step of a sheet must show.
 *
 * @param sheet steps in order
 * @param beam the beam that it names: thresholds, delays, latching, layout
 * @throws UsageError for a step that lacks what it needs
 */
export function expectedSteps(sheet: ProofSheet, beam: Beam): ExpectedStep[] {
  let state: DetectorState = 'normal';
  let blocked = false;
  return sheet.steps.map((step) => {
    const expected = expectedStep(step, state, blocked, sheet, beam);
    state = expected.state;
    blocked = step.do === 'cover-at-once' || (blocked && step.do !== 'uncover');
    return expected;
  });
}

function expectedStep(
  step: ProofStep,
  before: DetectorState,
  blocked: boolean,
  sheet: ProofSheet,
  beam: Beam,
): ExpectedStep {
  const { alarmThreshold, faultThreshold, alarmDelay, faultDelay, latching } = beam;
  const plain = {
    step,
    obscuration: undefined,
    signal: undefined,
    window: undefined,
    holdSeconds: 0,
    doubts: [],
    cautions: [],
  };
  const standing =
    before === 'fire' ? ['a fire signal still stands: reset before this step, or it can show nothing'] : [];
  const signalled = (signal: 'fire' | 'fault', delay: number) => ({
    signal: before === 'fire' ? undefined : signal,
    state: before === 'fire' ? ('fire' as const) : signal,
    window: { from: delay, to: delay + signalAllowance.value },
    holdSeconds: Math.max(step.hold ?? 0, delay + 2 * signalAllowance.value),
  });
  switch (step.do) {
    case 'cover-slowly':
      return {
        ...plain,
        ...signalled('fire', alarmDelay),
        words:
          'Draw an opaque cover over the whole reflector by hand, evenly, over five seconds or more. ' +
          `At ${figure(alarmThreshold)} % the alarm delay begins.`,
        doubts: standing,
        cautions: unreachable(beam, alarmThreshold, 'alarm'),
      };
    case 'cover-at-once':
      return {
        ...plain,
        ...signalled('fault', faultDelay),
        words: `Cover the whole reflector with one movement, in less than two seconds, to ${figure(faultThreshold)} % or more.`,
        doubts: standing,
        cautions: unreachable(beam, faultThreshold, 'fault'),
      };
    case 'part-cover':
    case 'filter': {
      const { value, tolerance } = lossOf(step, sheet, beam) as { value: number; tolerance: number };
      const seen = (percent: number) => equipmentObscuration(beam, percentToLevel(percent));
      const alarms = seen(value - tolerance) >= alarmThreshold;
      const quiet = seen(value + tolerance) < alarmThreshold;
      const obscuration = { value, low: value - tolerance, high: Math.min(value + tolerance, 100) };
      const words = stepWords(step, value, beam, sheet);
      if (quiet)
        return {
          ...plain,
          words,
          obscuration,
          state: before,
          holdSeconds: Math.max(step.hold ?? 0, quietFilterHold.value, alarmDelay + 2 * signalAllowance.value),
        };
      if (alarms) return { ...plain, ...signalled('fire', alarmDelay), words, obscuration, doubts: standing };
      return {
        ...plain,
        words,
        obscuration,
        state: before,
        doubts: [
          `${figure(value)} % lies too near the alarm threshold of ${figure(alarmThreshold)} % to prove anything: ` +
            'choose a denser or a thinner one',
        ],
      };
    }
    case 'uncover':
      return {
        ...plain,
        words: 'Take the cover or the filter away, and the hand out of the path.',
        state: before === 'fire' && latching ? 'fire' : 'normal',
      };
    case 'reset':
      return { ...plain, words: 'Reset the detector, or the panel.', state: blocked ? 'fault' : 'normal' };
    case 'panel-alarm':
      return {
        ...plain,
        words: 'Let the equipment send a simulated alarm to the panel: see it arrive, with the right address and text.',
        signal: before === 'fire' ? undefined : 'fire',
        state: 'fire',
        doubts: standing,
      };
  }
}

function unreachable(beam: Beam, threshold: number, name: string): string[] {
  const largest = largestObscuration(beam);
  return largest >= threshold
    ? []
    : [
        `the ${name} threshold of ${figure(threshold)} % cannot be reached: the most that can be read is ${figure(largest)} %`,
      ];
}

function stepWords(
  step: Extract<ProofStep, { do: 'part-cover' | 'filter' }>,
  value: number,
  beam: Beam,
  sheet: ProofSheet,
): string {
  if (step.do === 'filter') {
    const times = metTwice(beam, step) === 2 ? 'The light meets it twice, out and back' : 'The light meets it once';
    return (
      `Hold a filter of ${figure(100 * step.transmittance)} % single-pass transmittance at ${figure(beam.wavelength)} nm ` +
      `before the head. ${times}: ${figure(value)} % obscuration.`
    );
  }
  if (step.millimetres === undefined)
    return `Cover part of the reflector, so that ${figure(value)} % of its light is hidden.`;
  const where = step.from === 'middle' ? 'across the middle of the reflector' : 'from one edge of the reflector on';
  const lit = sheet.lit === 'by-the-lobe' ? 'lit by the lobe' : 'evenly lit';
  return `Cover ${figure(step.millimetres)} mm ${where} (${lit}). The light meets it once: ${figure(value)} % obscuration.`;
}
