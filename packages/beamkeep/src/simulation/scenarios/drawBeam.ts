import type { Lobe } from '../lobe.js';
import type { Random } from '../random.js';
import { stepShare } from '../recording/unit.js';
import type { BeamPlan, GainControl } from '../scenario.js';
import type { Ranges } from './ranges.js';

/** A beam before anything happens to it. */
export type BareBeam = Omit<BeamPlan, 'effects' | 'untold'>;

/**
 * A healthy beam: its optics, its scale, its electronics.
 *
 * @param coarse whether its logger writes changes of half a percent or more only
 */
export function drawBeam(ranges: Ranges, draw: Random, id: string, column: string, coarse: boolean): BareBeam {
  const shape = draw.weighted(ranges.lobes);
  const lobe: Lobe = {
    shape,
    power: shape === 'flat-topped' ? draw.between(...ranges.lobePower) : 2,
    tall: draw.chance(0.5) ? 1 : draw.between(...ranges.lobeTall),
    lean: draw.chance(0.6) ? 0 : draw.between(...ranges.lobeLean),
  };
  const far = draw.between(...ranges.offset);
  const aside = draw.between(0, 2 * Math.PI);
  const scale = coarse
    ? ({ unit: 'percent', cleanAir: 100, step: draw.pick([0.5, 1]) } as const)
    : drawScale(ranges, draw);
  const covered = draw.chance(0.35) ? 0 : draw.between(...ranges.covered);
  const step = stepShare({ ...scale, covered });
  const noise = Math.max(draw.logBetween(...ranges.noise), draw.chance(0.85) ? 0.35 * step : 0.02 * step);
  const control = draw.chance(ranges.gainControl.share) ? drawGainControl(ranges, draw, column) : undefined;
  return {
    id,
    layout: draw.chance(0.6) ? 'reflective' : 'end-to-end',
    separation: Math.round(draw.between(...ranges.separation)),
    height: Math.round(draw.between(4, 18) * 2) / 2,
    bearing: draw.between(0, 360),
    tilt: draw.normal() * 2,
    halfAngle: draw.logBetween(...ranges.halfAngle),
    lobe,
    offset: [far * Math.cos(aside), far * Math.sin(aside)],
    column,
    ...scale,
    covered,
    ceiling: draw.pick([1.03, 1.1, 1.25, 1.6, 2.5]),
    electronics: {
      noise,
      wander: noise * draw.between(...ranges.wander),
      wanderSeconds: draw.logBetween(120, 20_000),
      tails: draw.chance(0.5) ? 0 : draw.between(...ranges.tails),
      heatNoise: draw.chance(0.5) ? 0 : draw.between(...ranges.heatNoise),
      shimmer: draw.chance(0.6) ? 1 : draw.between(...ranges.shimmer),
      ageing: draw.between(...ranges.ageing),
      temperatureCoefficient: draw.chance(0.5) ? 0 : sign(draw) * draw.between(...ranges.temperatureCoefficient),
      warmUp: draw.chance(0.7) ? 0 : sign(draw) * draw.between(...ranges.warmUp),
      warmUpHours: draw.logBetween(0.3, 4),
    },
    ...(control ? { gainControl: control } : {}),
    alarmThreshold: draw.weighted([
      [35, 6],
      [25, 3],
      [50, 3],
      [40, 1],
      [20, 1],
      [60, 1],
    ]),
    faultThreshold: draw.pick([85, 90, 90, 95]),
    alarmDelay: draw.pick([5, 10, 10, 20, 30]),
    faultDelay: draw.pick([5, 10, 10, 20, 30]),
  };
}

const sign = (draw: Random) => (draw.chance(0.5) ? 1 : -1);

function drawScale(ranges: Ranges, draw: Random): Pick<BeamPlan, 'unit' | 'cleanAir' | 'step'> {
  const unit = draw.weighted(ranges.units);
  switch (unit) {
    case 'percent':
      return {
        unit,
        cleanAir: draw.chance(0.9) ? 100 : Math.round(draw.between(92, 108)),
        step: draw.weighted([
          [0.01, 4],
          [0.1, 8],
          [0.5, 1],
          [1, 1],
        ]),
      };
    case 'obscuration':
      return { unit, cleanAir: 0, step: draw.pick([0.01, 0.1, 0.1, 1]) };
    case 'counts':
      return { unit, cleanAir: draw.integer(700, 4000), step: 1 };
    case 'millivolts':
      return { unit, cleanAir: draw.integer(300, 5000), step: draw.pick([0.1, 0.5, 1]) };
    case 'decibels':
      return { unit, cleanAir: 0, step: draw.pick([0.01, 0.01, 0.05]) };
  }
}

function drawGainControl(ranges: Ranges, draw: Random, column: string): GainControl {
  return {
    hours: draw.logBetween(...ranges.gainControl.hours),
    limitDecibels: Math.round(draw.between(...ranges.gainControl.limit) * 10) / 10,
    ...(draw.chance(0.5) ? { column: `${column} gain` } : {}),
  };
}
