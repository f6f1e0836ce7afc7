import { stoppingGap } from '../numbers/index.js';
import type { Beam, Sampling } from '../site/index.js';
import { type BlockMemory, blockWatch, clearBelow, reached } from './blockWatch.js';

/*
 * The decision of one beam: obscuration in, changes of state out, one sample at a time.
 *
 *     normal --loss past the alarm threshold, held--> fire     latched: ends by reset only; else in clear air
 *     normal --blocked, held------------------------> fault    ends when the loss falls back below its threshold
 *     fault  --fallen back, still past alarm, held--> fire
 *     fire   --reset, or clear air------------------> normal, or fault where the beam is blocked meanwhile
 *
 * Every loss past the alarm threshold that is not a blocked beam is taken for smoke: a fast partial one, and a total one
 * whose speed the sampling cannot show.
 *
 * A condition begins at the first sample at or beyond its threshold and must hold for its whole delay: one sample below
 * it starts afresh, and so does a gap of more than five intervals, in which nobody knows what was. The change is dated
 * at the first sample not earlier than beginning and delay; in a log on change, where a value holds until the next
 * line, exactly there.
 *
 * Always true, and tested as laws: (1) fire is never left for fault, except by a reset or in clear air (EN 54-12:2002,
 * 4.10); (2) cutting a log in two and carrying the memory over gives the same changes; (3) a missing sample changes
 * nothing; (4) a higher alarm threshold never alarms earlier.
 */

/** State of a detector. */
export type DetectorState = 'normal' | 'fire' | 'fault';

/** What the decision needs to know of a beam; a `Beam` of the site will do. */
export type ResponseSettings = Pick<
  Beam,
  'alarmThreshold' | 'faultThreshold' | 'alarmDelay' | 'faultDelay' | 'latching' | 'hysteresis'
>;

/** How the samples came about. */
export interface ResponseCircumstances {
  /** A mean is weighed at its own time, like any other sample; only `on-change` differs. */
  readonly sampling: Sampling;
  /** Usual interval between samples [s]; a gap longer than five stops a delay. NaN: not known, nothing is a gap. */
  readonly intervalSeconds: number;
  /** Instants at which the beam was reset [ms], rising. */
  readonly resets: readonly number[];
}

/** A change of state. */
export interface Change {
  /** When the state changed [ms since 1970-01-01 UTC]. */
  readonly time: number;
  readonly state: DetectorState;
  /** When the condition began that led to it [ms]; the time of the change itself where none did. */
  readonly since: number;
  /** Of a fault: what led to it. */
  readonly fault?: 'blocked' | 'compensation-limit';
}

/** Everything a responder remembers: plain data, to be kept between two parts of a log. NaN: not running. */
export interface ResponderMemory {
  /** undefined before the first usable sample. */
  readonly state: DetectorState | undefined;
  readonly block: BlockMemory;
  /** Since when the alarm condition holds [ms]. */
  readonly alarmSince: number;
  /** Since when the compensation stands at its limit [ms]. */
  readonly limitSince: number;
  /** Signals given: fire, fault of a blocked beam, fault at the limit of compensation. */
  readonly fire: boolean;
  readonly fault: boolean;
  readonly limitFault: boolean;
  /** How many resets have been used up. */
  readonly resetsDone: number;
}

/** One beam's decision, fed sample by sample. */
export interface Responder {
  /**
   * Takes the next sample.
   *
   * @param time instant [ms], not before the last one
   * @param obscuration as the equipment sees it [%]; NaN is missing and changes nothing
   * @param atLimit whether the equipment's compensation has come to its end
   * @param joined whether samples between the last one and this are only left out: no gap, however long
   */
  feed(time: number, obscuration: number, atLimit?: boolean, joined?: boolean): void;
  /** Says that the log goes on to an instant [ms]: in a log on change the last value holds until then. */
  advance(time: number): void;
  /** The next instant at which a delay would be over or a reset comes [ms]; infinity when none is under way. */
  due(): number;
  /** What to carry over to the next part of the log. */
  memory(): ResponderMemory;
}

/** Whether a difference of two instants [ms] is a gap that stops a delay, at a usual interval [s]. */
export const isGap = (difference: number, intervalSeconds: number): boolean =>
  difference > stoppingGap.value * intervalSeconds * 1000;

/**
 * A beam's decision by threshold, delay and latching.
 *
 * @param settings thresholds [%], delays [s], latching
 * @param circumstances how the samples came about
 * @param onChange told every change, in order of time; the first is the state at the first usable sample
 * @param carried memory of the responder that read the part of the log before this one
 *
 * Source: EN 54-12:2002, 4.8 and 4.10; for the blocked beam common practice, no source.
 * @example
 * const changes: Change[] = [];
 * const beam = responder(site.beams[0], { sampling: 'regular', intervalSeconds: 1, resets: [] }, (c) => changes.push(c));
 * beam.feed(0, 2);
 */
export function responder(
  { alarmThreshold, faultThreshold, alarmDelay, faultDelay, latching, hysteresis }: ResponseSettings,
  { sampling, intervalSeconds, resets }: ResponseCircumstances,
  onChange: (change: Change) => void,
  carried?: ResponderMemory,
): Responder {
  const holds = sampling === 'on-change';
  const alarmWait = Math.round(alarmDelay * 1000);
  const faultWait = Math.round(faultDelay * 1000);
  const block = blockWatch(clearBelow(alarmThreshold), faultThreshold, holds, carried?.block);
  let {
    state,
    alarmSince = Number.NaN,
    limitSince = Number.NaN,
    fire = false,
    fault = false,
    limitFault = false,
    resetsDone = 0,
  } = carried ?? {};

  function feed(time: number, obscuration: number, atLimit = false, joined = false): void {
    if (Number.isNaN(obscuration)) return;
    if (holds) advanceBefore(time);
    else if (!joined && isGap(time - block.memory.time, intervalSeconds)) stopDelays();
    reset(time);
    const blocked = block.feed(time, obscuration);
    if (blocked || !reached(obscuration, alarmThreshold)) alarmSince = Number.NaN;
    else if (Number.isNaN(alarmSince)) alarmSince = time;
    if (!atLimit) limitSince = Number.NaN;
    else if (Number.isNaN(limitSince)) limitSince = time;
    if (!latching && !reached(obscuration, alarmThreshold - hysteresis)) fire = false;
    if (!reached(obscuration, faultThreshold - hysteresis)) fault = false;
    if (!atLimit) limitFault = false;
    decide(time);
  }

  function stopDelays(): void {
    alarmSince = Number.NaN;
    limitSince = Number.NaN;
    // Whether the loss stayed total through the gap is not shown: what follows counts as any other loss.
    if (!fault) block.forget();
  }

  /** Uses up the resets until an instant; only a fire signal is ended by one, and its delay starts afresh. */
  function reset(time: number): void {
    while (nextReset() <= time) {
      resetsDone += 1;
      if (!fire) continue;
      fire = false;
      alarmSince = Number.NaN;
    }
  }

  const nextReset = (): number => resets[resetsDone] ?? Number.POSITIVE_INFINITY;

  /** Gives the signals whose delay is over at an instant, and tells the state where it is a new one. */
  function decide(time: number): void {
    const { blocked, since } = block.memory;
    if (time - alarmSince >= alarmWait) fire = true;
    if (blocked && time - since >= faultWait) fault = true;
    if (time - limitSince >= faultWait) limitFault = true;
    const now = fire ? 'fire' : fault || limitFault ? 'fault' : 'normal';
    if (now === state) return;
    state = now;
    if (now === 'fire') onChange({ time, state, since: alarmSince });
    else if (now === 'normal') onChange({ time, state, since: time });
    else if (fault) onChange({ time, state, since, fault: 'blocked' });
    else onChange({ time, state, since: limitSince, fault: 'compensation-limit' });
  }

  function due(): number {
    const { blocked, since } = block.memory;
    let next = fire ? nextReset() : Number.POSITIVE_INFINITY;
    if (!fire && alarmSince + alarmWait < next) next = alarmSince + alarmWait;
    if (!fault && blocked && since + faultWait < next) next = since + faultWait;
    if (!limitFault && limitSince + faultWait < next) next = limitSince + faultWait;
    return next;
  }

  /** Lets the held value work up to an instant, which itself is left to the sample that comes there. */
  function advanceBefore(time: number): void {
    for (let next = due(); next < time; next = due()) work(next);
  }

  /** What happens at an instant within the hold of a value: a reset, or the end of a delay. */
  function work(time: number): void {
    const smoke = !Number.isNaN(alarmSince);
    reset(time);
    if (smoke && Number.isNaN(alarmSince)) alarmSince = time;
    decide(time);
  }

  return {
    feed,
    advance(time) {
      if (!holds || state === undefined) return;
      for (let next = due(); next <= time; next = due()) work(next);
    },
    due,
    memory: () => ({
      state,
      block: { ...block.memory },
      alarmSince,
      limitSince,
      fire,
      fault,
      limitFault,
      resetsDone,
    }),
  };
}
