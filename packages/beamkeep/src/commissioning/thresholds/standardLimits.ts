import { percentToDecibels } from '../../attenuation/index.js';
import {
  alarmFilter,
  bs5839,
  chineseThreshold,
  leastSeparation,
  leastThreshold,
  quietFilter,
  quietFilterHold,
  rapidDeepLoss,
  rapidPartialLoss,
  russianThreshold,
  type Sourced,
} from '../../numbers/index.js';
import { compensationBound, slowFireLimit } from '../../response/index.js';
import type { Beam } from '../../site/index.js';

/*
 * What standards ask of a threshold, a delay and a compensation, one line a limit. Local codes, the maker's
 * instructions and licensed practice decide; a limit that is only remembered says so.
 */

/** One limit, and how a beam stands to it. */
export interface StandardLimit {
  /** Standard, clause and edition, as far as they are known. */
  readonly source: string;
  /** `read` in a text at hand, or `from memory`: to be looked up before it is relied on. */
  readonly seen: Sourced['seen'];
  /** What is asked, so that the limit may follow: "alarm threshold at least". */
  readonly asks: string;
  /** The figure asked for, with its unit. */
  readonly limit: number | undefined;
  readonly unit: string;
  /** The beam's figure in that unit; undefined where the site file does not say it. */
  readonly found: number | undefined;
  /** `not known`: beamkeep does not know the figure, or the site file does not say the beam's. */
  readonly kept: 'yes' | 'no' | 'not known';
}

const cite = (figure: Sourced): Pick<StandardLimit, 'source' | 'seen'> => {
  const clause = 'clause' in figure && figure.clause !== undefined ? `, ${figure.clause}` : '';
  return { source: `${figure.source}${clause}`, seen: figure.seen };
};

function limitLine(
  figure: Sourced,
  asks: string,
  found: number | undefined,
  keeps: (found: number, limit: number) => boolean,
): StandardLimit {
  return {
    ...cite(figure),
    asks,
    limit: figure.value,
    unit: figure.unit,
    found,
    kept: found === undefined ? 'not known' : keeps(found, figure.value) ? 'yes' : 'no',
  };
}

const atLeast = (found: number, limit: number) => found >= limit - 1e-9;
const atMost = (found: number, limit: number) => found <= limit + 1e-9;

/**
 * How the settings of a beam stand to what standards are known, or remembered, to ask.
 *
 * @param beam of the site
 * @returns a line a limit; what cannot be compared is listed as not known, not left out
 */
export function standardLimits(beam: Beam): StandardLimit[] {
  const { alarmDelay, faultDelay, separation, height, compensation } = beam;
  const alarm = percentToDecibels(beam.alarmThreshold);
  const fault = percentToDecibels(beam.faultThreshold);
  const limit = typeof compensation === 'object' ? compensation.limitDecibels : compensation === 'none' ? 0 : undefined;
  const bound = compensationBound(beam.alarmThreshold);
  const ceiling = beam.alarmThreshold <= 35 ? bs5839.ceilingAtMost : bs5839.ceiling;
  const slow = slowFireLimit(alarm, alarm / 4);
  const slowRule: Pick<StandardLimit, 'source' | 'seen'> = {
    source: 'EN 54-7:2001, response to slowly developing fires, 4.8 (EN 54-12 believed alike)',
    seen: 'from memory',
  };
  return [
    limitLine(leastThreshold, 'alarm threshold at least', alarm, atLeast),
    limitLine(russianThreshold.least, 'alarm threshold at least', alarm, atLeast),
    limitLine(russianThreshold.most, 'alarm threshold at most', alarm, atMost),
    limitLine(chineseThreshold.least, 'alarm threshold at least', alarm, atLeast),
    limitLine(chineseThreshold.most, 'alarm threshold at most', alarm, atMost),
    limitLine(quietFilter, `no alarm within ${quietFilterHold.value} s from a filter of`, alarm, (a, l) => a > l),
    limitLine(alarmFilter, 'alarm from a filter of', alarm, atMost),
    limitLine(rapidPartialLoss.loss, 'fire from a loss, within 1 s, of', alarm, atMost),
    limitLine(rapidPartialLoss.fireWithin, 'the signal of that fire (6 dB in 1 s) within', alarmDelay, atMost),
    limitLine(rapidDeepLoss.loss, 'fire or fault from a loss, within 1 s, of', fault, atMost),
    limitLine(
      rapidDeepLoss.signalWithin,
      'the signal of that loss (10 dB in 1 s) within',
      Math.max(alarmDelay, faultDelay),
      atMost,
    ),
    {
      ...slowRule,
      asks: 'compensation that ends, at 1.6 times the threshold in dB, by',
      limit: bound.limitDecibels - bound.initialDecibels,
      unit: 'dB',
      found: limit,
      kept:
        limit === undefined ? 'not known' : atMost(limit, bound.limitDecibels - bound.initialDecibels) ? 'yes' : 'no',
    },
    {
      ...slowRule,
      asks: `a fire that grows by ${round(alarm / 4)} dB an hour alarms within`,
      limit: slow.limitSeconds / 60,
      unit: 'min',
      found: undefined,
      kept: 'not known',
    },
    limitLine(leastSeparation, 'separation at least', separation, atLeast),
    limitLine(bs5839.separation, 'separation at most', separation, atMost),
    limitLine(ceiling, 'ceiling, above the beam, at most', height, atMost),
    {
      source: 'UL 268, projected beam detectors',
      seen: 'from memory',
      asks: 'a rule of its own for sensitivity by length, neither seen nor remembered',
      limit: undefined,
      unit: '',
      found: undefined,
      kept: 'not known',
    },
  ];
}

const round = (value: number): number => Number(value.toPrecision(3));
