import type { Beam } from '../site/index.js';
import { compensationBound } from './compensationBound.js';
import { type Change, type ResponderMemory, type ResponseCircumstances, responder } from './responder.js';
import { type SlowGainMemory, type SlowGainSettings, slowGain } from './slowGain.js';

/** What may be asked of a beam's response beyond its settings. */
export interface ResponseOptions {
  /**
   * Whether to apply a model of the equipment's slow gain; asked for where the log holds the light before the gain.
   * The limit is the site's; where it is `unknown`, the widest that the bound on compensation allows. A rate [dB/h]
   * may be given in place of `true`.
   */
  readonly compensate?: boolean | { readonly decibelsPerHour: number } | undefined;
}

/** What a beam's response remembers: plain data. */
export interface BeamMemory {
  readonly decision: ResponderMemory;
  readonly gain?: SlowGainMemory;
}

/** One beam from the light before its gain to its state, fed sample by sample. */
export interface BeamResponder {
  /** Takes a sample: instant [ms], obscuration as the equipment sees it [%], whether samples before are only left out. */
  feed(time: number, obscuration: number, joined?: boolean): void;
  /** Says that the log goes on to an instant [ms]. */
  advance(time: number): void;
  /** The next instant at which a delay would be over or a reset comes [ms]. */
  due(): number;
  /** What to carry over to the next part of the log. */
  memory(): BeamMemory;
}

/** The slow gain that a beam's equipment is taken to have; undefined where none is to be applied. */
export function slowGainOf(
  { compensation, alarmThreshold }: Pick<Beam, 'compensation' | 'alarmThreshold'>,
  { compensate = false }: ResponseOptions,
): SlowGainSettings | undefined {
  if (compensate === false || compensation === 'none') return undefined;
  const rate = compensate === true ? {} : compensate;
  if (compensation !== 'unknown') return { limitDecibels: compensation.limitDecibels, ...rate };
  const { initialDecibels, limitDecibels } = compensationBound(alarmThreshold);
  return { limitDecibels: limitDecibels - initialDecibels, ...rate };
}

/**
 * A beam's response to the obscuration that its equipment sees: slow gain where asked for, thresholds, delays, latching.
 *
 * @param beam of the site
 * @param circumstances how the samples came about
 * @param onChange told every change, in order of time; the first is the state at the first usable sample
 * @param options what to model beyond the settings
 * @param carried memory from the part of the log before this one
 */
export function beamResponder(
  beam: Beam,
  circumstances: ResponseCircumstances,
  onChange: (change: Change) => void,
  options: ResponseOptions = {},
  carried?: BeamMemory,
): BeamResponder {
  const decision = responder(beam, circumstances, onChange, carried?.decision);
  const gainSettings = slowGainOf(beam, options);
  const gain = gainSettings && slowGain(gainSettings, beam.alarmThreshold, carried?.gain);
  return {
    feed(time, obscuration, joined) {
      if (!gain) return decision.feed(time, obscuration, false, joined);
      const seen = gain.feed(time, obscuration);
      decision.feed(time, seen.obscuration, seen.atLimit, joined);
    },
    advance: decision.advance,
    due: decision.due,
    memory: () => ({ decision: decision.memory(), ...(gain && { gain: gain.memory() }) }),
  };
}
