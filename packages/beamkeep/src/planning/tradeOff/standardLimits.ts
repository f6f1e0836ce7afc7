import { decibelsToPercent } from '../../attenuation/index.js';
import { alarmFilter, bs5839, leastThreshold, quietFilter, rapidPartialLoss } from '../../numbers/index.js';
import { placeOf } from '../rules/ruleSet.js';

/** A line that a standard draws across the choices. */
export interface StandardLimit {
  readonly of: 'threshold' | 'delay';
  /** The setting may not be below it (`least`) or above it (`most`). */
  readonly side: 'least' | 'most';
  /** [%] of a threshold, [s] of a delay. */
  readonly value: number;
  readonly words: string;
  readonly clause: string;
}

/**
 * Limits that standards set to threshold and delay, as far as they are known.
 *
 * @param ceiling height [m], on which one of them depends; left out: unknown
 */
export function standardLimits(ceiling?: number): StandardLimit[] {
  const { loss, fireWithin } = rapidPartialLoss;
  return [
    {
      of: 'threshold',
      side: 'least',
      value: decibelsToPercent(leastThreshold.value),
      words: `smallest threshold of a beam detector, ${leastThreshold.value} dB`,
      clause: placeOf(leastThreshold),
    },
    {
      of: 'threshold',
      side: 'least',
      value: decibelsToPercent(quietFilter.value),
      words: `site test in China: a filter of ${quietFilter.value} dB must not alarm`,
      clause: placeOf(quietFilter),
    },
    {
      of: 'threshold',
      side: 'most',
      value: decibelsToPercent(loss.value),
      words: `a sudden loss of ${loss.value} dB must alarm`,
      clause: placeOf(loss),
    },
    {
      of: 'threshold',
      side: 'most',
      value: decibelsToPercent(alarmFilter.value),
      words: `site test in China: a filter of ${alarmFilter.value} dB must alarm`,
      clause: placeOf(alarmFilter),
    },
    {
      of: 'delay',
      side: 'most',
      value: fireWithin.value,
      words: `a sudden loss of ${loss.value} dB must alarm within ${fireWithin.value} s`,
      clause: placeOf(fireWithin),
    },
    ...(ceiling === undefined || ceiling <= bs5839.ceiling.value
      ? []
      : [
          {
            of: 'threshold',
            side: 'most',
            value: bs5839.sensitive.value,
            words: `ceilings above ${bs5839.ceiling.value} m ask for response at ${bs5839.sensitive.value} % or less`,
            clause: placeOf(bs5839.sensitive),
          } as const,
        ]),
  ];
}

/**
 * Limits that a setting does not keep.
 *
 * @param setting threshold [%] and delay [s]
 * @param limits from `standardLimits`
 * @example limitsBroken({ threshold: 95, delay: 0 }, standardLimits()).length // 2
 */
export function limitsBroken(
  { threshold, delay }: { readonly threshold: number; readonly delay: number },
  limits: readonly StandardLimit[],
): StandardLimit[] {
  return limits.filter(({ of, side, value }) => {
    const own = of === 'threshold' ? threshold : delay;
    return side === 'least' ? own < value : own > value;
  });
}
