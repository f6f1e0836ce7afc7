import { decibelsToPercent, percentToDecibels } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import { lobeLoss } from '../../optics/index.js';
import { whoDecides } from '../../smoke/index.js';
import { type BeamOptics, overfills, pathLoss } from './pathLoss.js';

/*
 * Two budgets, both in decibels, are drawn from by four thieves:
 *
 *     received light    from the nearest range to the farthest that the maker allows:
 *                       | range ========= | aim == | dirt = | structure = | ....... left .......|
 *
 *     alarm threshold   the level in clean air was made 100 % at commissioning, range and standing aim with it; what
 *                       comes later counts as smoke:
 *                       | dirt = | structure = | .... left for smoke .... |
 */

/** What is asked. */
export interface BudgetQuestion {
  readonly optics: BeamOptics;
  /** Distance between the two ends [m]. */
  readonly separation: number;
  /** Shortest and longest distance that the maker allows [m]. */
  readonly nearest: number;
  readonly farthest: number;
  /** Turn at which the received level halves [degrees]. */
  readonly halfAngle: number;
  /** How far the aim stands off the peak [degrees], 0 or more. */
  readonly aimOffset: number;
  /** How far the structure may turn the head, or shift the spot, beyond that [degrees], 0 or more. */
  readonly movement: number;
  /** Dirt until the next cleaning [% of the light], 0 or more. */
  readonly dirtPercent: number;
  /** Obscuration that means smoke [%]. */
  readonly alarmThreshold: number;
}

/** One part of a budget. */
export interface BudgetPart {
  readonly part: 'range' | 'aim' | 'dirt' | 'structure' | 'left';
  /** [dB]; negative for what is left where the budget is overdrawn. */
  readonly decibels: number;
}

/** Both budgets, as `beamkeep budget --json` prints them. */
export interface LossBudget {
  readonly format: 'beamkeep-budget/1';
  /** Received light from the nearest range to the farthest. */
  readonly light: { readonly decibels: number; readonly parts: readonly BudgetPart[] };
  /** Alarm threshold. */
  readonly alarm: { readonly decibels: number; readonly parts: readonly BudgetPart[] };
  /** Obscuration by smoke that alarms once dirt and structure have taken their part [%]; 0: none is needed. */
  readonly smokeToAlarm: number;
  /** Whether the spot is larger than what should catch it. */
  readonly overfilled: boolean;
  readonly warnings: readonly string[];
  readonly leftOut: readonly string[];
  readonly decides: string;
}

const leftOut: readonly string[] = [
  "The maker's own reserve beyond the farthest range, the receiver's noise, and gain that compensates dirt.",
  'Lobes that are not Gaussian, a second reflecting surface, light that does not come by the beam.',
  'Mist and dust in the air.',
];

/**
 * What range, aim, dirt and structure take from a beam's light, and from its margin to the alarm.
 *
 * @throws UsageError for a separation outside the maker's range, a threshold that is none, a negative part
 */
export function lossBudget(question: BudgetQuestion): LossBudget {
  const { optics, separation, nearest, farthest, halfAngle, aimOffset, movement, dirtPercent, alarmThreshold } =
    question;
  check(question);
  const first = pathLoss(optics, nearest);
  const range = pathLoss(optics, separation) - first;
  const aim = lobeLoss(aimOffset, halfAngle);
  const structure = lobeLoss(aimOffset + movement, halfAngle) - aim;
  const dirt = percentToDecibels(dirtPercent);
  const whole = pathLoss(optics, farthest) - first;
  const threshold = percentToDecibels(alarmThreshold);
  const left = whole - range - aim - dirt - structure;
  const margin = threshold - dirt - structure;
  return {
    format: 'beamkeep-budget/1',
    light: {
      decibels: whole,
      parts: [
        { part: 'range', decibels: range },
        { part: 'aim', decibels: aim },
        { part: 'dirt', decibels: dirt },
        { part: 'structure', decibels: structure },
        { part: 'left', decibels: left },
      ],
    },
    alarm: {
      decibels: threshold,
      parts: [
        { part: 'dirt', decibels: dirt },
        { part: 'structure', decibels: structure },
        { part: 'left', decibels: margin },
      ],
    },
    smokeToAlarm: margin <= 0 ? 0 : decibelsToPercent(margin),
    overfilled: overfills(optics, separation),
    warnings: warningsOf(left, margin, structure, question),
    leftOut,
    decides: whoDecides,
  };
}

function warningsOf(left: number, margin: number, structure: number, question: BudgetQuestion): string[] {
  const { halfAngle, aimOffset, movement } = question;
  const told: string[] = [];
  if (left < 0) {
    told.push(
      `The light is overdrawn by ${(-left).toFixed(2)} dB: at its worst the beam sees less than at its farthest range.`,
    );
  }
  if (margin <= 0) {
    told.push('Dirt and structure alone reach the alarm threshold: this beam would alarm without smoke.');
  }
  if (aimOffset + movement > halfAngle) {
    told.push(
      'Aim and structure together go beyond the half-angle, where real lobes fall more steeply than reckoned here.',
    );
  }
  if (aimOffset > 0 && structure > lobeLoss(movement, halfAngle)) {
    told.push(
      `Aimed at the peak the same movement would cost ${lobeLoss(movement, halfAngle).toFixed(2)} dB instead of ${structure.toFixed(2)} dB.`,
    );
  }
  return told;
}

function check({
  separation,
  nearest,
  farthest,
  aimOffset,
  movement,
  dirtPercent,
  alarmThreshold,
}: BudgetQuestion): void {
  if (!(farthest > nearest && nearest > 0)) {
    throw new UsageError(`nearest ${nearest} m and farthest ${farthest} m: the maker's range must rise from above 0`);
  }
  if (!(separation >= nearest && separation <= farthest)) {
    throw new UsageError(`separation ${separation} m lies outside the maker's range, ${nearest} to ${farthest} m`);
  }
  if (!(aimOffset >= 0)) throw new UsageError(`aimOffset ${aimOffset} degrees must be 0 or more`);
  if (!(movement >= 0)) throw new UsageError(`movement ${movement} degrees must be 0 or more`);
  if (!(dirtPercent >= 0 && dirtPercent < 100)) {
    throw new UsageError(`dirtPercent ${dirtPercent} must be 0 or more and less than 100`);
  }
  if (!(alarmThreshold > 0 && alarmThreshold < 100)) {
    throw new UsageError(`alarmThreshold ${alarmThreshold} % must lie between 0 and 100`);
  }
}
