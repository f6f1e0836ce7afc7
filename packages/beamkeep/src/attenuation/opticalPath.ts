import { refuseUnlessPositive } from './refuse.js';

/** `reflective`: light crosses the smoke twice, out and back; `end-to-end`: once. */
export type Layout = 'reflective' | 'end-to-end';

/**
 * How often the light of a beam crosses smoke that fills its path, or a filter before its head.
 *
 * A cover on the reflector is met once, whatever the layout.
 *
 * @returns 2 for a reflective beam, 1 for end-to-end
 */
export const crossings = (layout: Layout): 1 | 2 => (layout === 'reflective' ? 2 : 1);

/**
 * Length of smoke that the light crosses when smoke fills the beam.
 *
 * @param layout whether the light comes back by the way it went
 * @param separation distance between the two ends [m], more than 0
 * @returns optical path [m]: twice the separation of a reflective beam
 * @throws UsageError for a separation that is not more than 0
 *
 * The same threshold in percent is reached by a reflective beam at half the smoke [dB/m].
 * Source: derived; that path is an exponent: 40 CFR 86.884-14(a), revision of 1 July 2003.
 * @example opticalPath('reflective', 62) // 124
 */
export function opticalPath(layout: Layout, separation: number): number {
  refuseUnlessPositive('separation', separation, 'm');
  return crossings(layout) * separation;
}
