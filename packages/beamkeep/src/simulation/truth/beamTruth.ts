import type { BeamLight } from '../beamLight.js';
import { rank } from '../grid.js';
import { stepShare } from '../recording/unit.js';
import type { BeamPlan } from '../scenario.js';
import type { Scene } from '../scene.js';
import { creepLabels, knockLabels } from './aimLabels.js';
import { cleanedLabels } from './cleanedLabels.js';
import { dirtForecast, dirtLabels } from './dirtLabels.js';
import { blockLabels, noiseLabels, smokeLabels, vibrationLabels } from './fastLabels.js';
import { gapLabels } from './gapLabels.js';
import { dailySwings, movementLabels } from './movementLabels.js';
import { noiseFigures } from './noiseFigures.js';
import { ownTraces } from './ownTraces.js';
import { recurring } from './recurring.js';
import type { BeamTruth, NoiseFigures } from './truthFile.js';
import { brief, isoAt, partsOf, seenFrom, seenUpTo, type Viewed } from './viewed.js';

/**
 * What is true of one beam, by one rule for all: a cause is labelled when its own effect (the level without it minus
 * the level with it) can be seen in this log.
 *
 * @param seen 1 where the log holds a usable value of this beam
 */
export function beamTruth(scene: Scene, beam: BeamPlan, light: BeamLight, seen: Uint8Array): BeamTruth {
  const noise = noiseFigures(scene.time, light.noise, stepShare(beam));
  const [slow, fast] = [noise.slowLimitPercent / 100, noise.fastLimitPercent / 100];
  const view: Viewed = { scene, beam, light, seen, noise, slow, fast };
  const all = [
    dirtLabels(view),
    knockLabels(view),
    creepLabels(view),
    movementLabels(view),
    cleanedLabels(view),
    blockLabels(view),
    recurring(view, {
      cause: 'condensation',
      limit: slow,
      least: 2,
      unit: '% at the deepest of a night, median',
      bothSigns: false,
    }),
    recurring(view, {
      cause: 'process-aerosol',
      limit: fast,
      least: 2,
      unit: '% at the deepest of a day, median',
      bothSigns: false,
    }),
    recurring(view, {
      cause: 'ambient-light',
      limit: fast,
      least: 2,
      unit: '% added to the level at most (negative: taken away)',
      bothSigns: true,
    }),
    vibrationLabels(view),
    noiseLabels(view),
    gapLabels(view),
    smokeLabels(view),
  ];
  const causes = all
    .flatMap((labels) => labels.causes)
    .sort((a, b) => (a.start < b.start ? -1 : a.start > b.start ? 1 : 0));
  const aim = causes.some(({ cause }) => cause === 'building-movement') ? aimTruth(view) : undefined;
  const [first, last] = [seenFrom(view, 0), seenUpTo(view, Number.MAX_SAFE_INTEGER)];
  return {
    id: beam.id,
    from: isoAt(view, Math.min(first, scene.time.length - 1)),
    to: isoAt(view, Math.max(last, 0)),
    causes,
    traces: [...all.flatMap((labels) => labels.traces), ...ownTraces(beam)],
    couldBeSmoke: all.flatMap((labels) => labels.couldBeSmoke),
    forecast: dirtForecast(view, swayLow(view)),
    noise: briefFigures(noise),
    ...(aim ? { aim } : {}),
    ...(beam.gainControl ? { gainControl: true } : {}),
  };
}

const briefFigures = (noise: NoiseFigures): NoiseFigures => ({
  samplePercent: brief(noise.samplePercent),
  hourlyPercent: brief(noise.hourlyPercent),
  stepPercent: brief(noise.stepPercent),
  slowLimitPercent: brief(noise.slowLimitPercent),
  fastLimitPercent: brief(noise.fastLimitPercent),
});

/** What the sway takes at the daily low of an ordinary day, as a share of the level. */
function swayLow(view: Viewed): number {
  const parts = partsOf(view, 'building-movement');
  if (parts.length === 0) return 0;
  const taken = view.light.taken(parts);
  const share = taken.map((value, i) => value / Math.max(1e-6, value + (view.light.level[i] as number)));
  return Math.max(0, rank(share, 0.97));
}

function aimTruth(view: Viewed): BeamTruth['aim'] {
  const { beam, light } = view;
  const plan = beam.effects.find((one) => one.effect === 'movement');
  const part = light.parts.find((one) => one.effect === plan);
  if (plan?.effect !== 'movement' || !part?.turn) return undefined;
  // The offset about which it moves: the middle of the turns that the log saw, knocks and creep included.
  let [x, y] = beam.offset;
  for (const { turn } of light.parts) {
    if (!turn) continue;
    x += rank(turn[0], 0.5);
    y += rank(turn[1], 0.5);
  }
  const offset = Math.hypot(x, y);
  const [cos, sin] = [Math.cos(plan.direction), Math.sin(plan.direction)];
  const [sideways, upwards] = part.turn;
  const path = Float64Array.from(sideways, (value, i) => cos * value + sin * (upwards[i] as number));
  const swings = dailySwings(view, path).map(({ size }) => size);
  const along = offset === 0 ? 0 : (cos * x + sin * y) / offset;
  return {
    offsetInHalfAngles: brief(offset),
    movementInHalfAngles: brief(swings.length > 0 ? rank(swings, 0.85) : plan.swing),
    halfAngleDegrees: brief(beam.halfAngle),
    alongOffset: brief(along),
  };
}
