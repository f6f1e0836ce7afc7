import { refuseNegative, refuseUnlessLength } from './refuse.js';

/**
 * Share of the light that even smoke takes from a beam.
 *
 * @param extinction extinction coefficient of the smoke at the beam's wavelength [1/m], 0 or more
 * @param path length of smoke that the light crosses [m], 0 or more and finite; twice the separation when reflected
 * @returns obscuration [%], 0 to 100; NaN in, NaN out: a missing sample stays missing
 * @throws UsageError for a negative extinction, or a path that is negative, endless or missing
 *
 * For smoke that varies along the beam (a plume, a layer) use `lossAlong`.
 * Source: FDS Technical Reference Guide, "Fire Detection Devices", Smoke Detectors.
 * @example obscuration(0.626, 10) // 99.81
 */
export function obscuration(extinction: number, path: number): number {
  refuseNegative('extinction', extinction, '1/m');
  refuseUnlessLength('path', path);
  if (path === 0) return Number.isNaN(extinction) ? Number.NaN : 0; // no smoke, however dense
  return -100 * Math.expm1(-extinction * path); // expm1: thin smoke keeps its digits
}
