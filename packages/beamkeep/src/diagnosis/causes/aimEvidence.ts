import type { Beam } from '../../site/index.js';
import type { Evidence } from '../finding.js';
import type { Heat } from '../heat.js';
import { evidence } from '../wording.js';

/** Unit of a turn that is told by the half-angle of the lobe. */
const perHalfAngle = 'of the half-angle';

/**
 * What the movement tells of the aim: offset and movement in half-angles, in degrees and millimetres where the beam's
 * half-angle is known, and what re-aiming would win; bounds only where the curvature cannot be told from none.
 */
export function aimEvidence(heat: Heat | undefined, { halfAngle, separation }: Beam): Evidence[] {
  if (heat === undefined) return [];
  const { offset, movement, winOnAverage, winAtLow, determined } = heat.aim;
  const told = [
    evidence('share of the daily course explained by the temperature', heat.explained, ''),
    evidence('lag behind the temperature', heat.lagHours, 'h'),
  ];
  if (!determined) {
    const least = Math.max(0, offset.low, -offset.high);
    return least > 0 && Number.isFinite(least)
      ? [...told, evidence('offset of the aim, at least', least, perHalfAngle)]
      : told;
  }
  const away = Math.abs(offset.value);
  const [low, high] = [Math.abs(offset.low), Math.abs(offset.high)].sort((a, b) => a - b) as [number, number];
  const crosses = offset.low < 0 && offset.high > 0;
  told.push(
    evidence('offset of the aim', away, perHalfAngle),
    evidence('offset of the aim, 90 % limits from', crosses ? 0 : low, perHalfAngle),
    evidence('offset of the aim, 90 % limits to', high, perHalfAngle),
    evidence('movement to either side', movement.value, perHalfAngle),
    evidence('won by re-aiming, on average', winOnAverage.value, 'dB'),
    evidence('won by re-aiming, at the daily low', winAtLow.value, 'dB'),
  );
  if (halfAngle === undefined) return told;
  const degrees = away * halfAngle;
  return [
    ...told,
    evidence('offset of the aim, as an angle', degrees, 'degrees'),
    evidence('offset of the aim at the far end', 1000 * separation * Math.tan((degrees * Math.PI) / 180), 'mm'),
  ];
}
