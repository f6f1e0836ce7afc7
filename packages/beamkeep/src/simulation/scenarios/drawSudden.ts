import { day, hour, minute, second } from '../../columns/index.js';
import type { Block, Standing } from '../effects/block.js';
import type { GainStep } from '../effects/gainStep.js';
import type { Gap } from '../effects/gap.js';
import type { Fire, Smoke } from '../effects/smoke.js';
import type { VisitPlan } from '../scenario.js';
import { atLeast, type BeamSetting, decibels, type Setting, within } from './setting.js';

/** Objects in the path, some passing, some left there. */
export function drawBlock(setting: Setting, beam: BeamSetting): Block {
  const { ranges, start, end, intervalSeconds } = setting;
  const { draw } = beam;
  const count = draw.integer(1, 6);
  const interval = intervalSeconds * second;
  const standings: Standing[] = [];
  let free = start + 0.02 * (end - start);
  for (let k = 0; k < count && free < end; k++) {
    const from = free + draw.uniform() * ((end - free) / (count - k)) * 1.4;
    const longest = Math.min(3 * day, 0.15 * (end - start));
    const lasts = Math.max(draw.logBetween(5 * second, Math.max(longest, 10 * second)), 2.5 * interval);
    const stays = k === count - 1 && draw.chance(0.06);
    standings.push({
      from,
      to: stays ? end + day : from + lasts,
      covers: draw.chance(0.3) ? draw.between(0.93, 1) : Math.max(1.3 * beam.fast, draw.between(...ranges.blockDepth)),
      edge: draw.chance(0.5) ? 0 : draw.between(0.1, 2),
    });
    free = from + lasts + 6 * interval + 0.02 * (end - start);
  }
  return {
    effect: 'block',
    stream: `${beam.id}/block`,
    standings,
    restless: draw.chance(0.5) ? 0 : draw.between(0, 0.012),
  };
}

/** Cover tests at a visit: someone holds a cover before the far end for a minute or so. */
export function drawCoverTest(setting: Setting, beam: BeamSetting): { effect: Block; visits: VisitPlan[] } {
  const { draw } = beam;
  const visit = within(setting, draw, 0.2, 0.8);
  const interval = setting.intervalSeconds * second;
  const standings: Standing[] = [];
  let from = visit + draw.between(2, 10) * minute;
  for (let k = 0; k < draw.integer(1, 3); k++) {
    const to = from + Math.max(draw.between(20, 120) * second, 2.5 * interval);
    standings.push({ from, to, covers: draw.pick([1, 1, 0.35, 0.5, 0.6]), edge: draw.between(0.2, 1.5) });
    from = to + Math.max(draw.between(1, 5) * minute, 4 * interval);
  }
  const until = Math.round((from + 5 * minute) / minute) * minute;
  return {
    effect: { effect: 'block', stream: `${beam.id}/test`, standings, restless: 0 },
    visits: [{ time: Math.round(visit / minute) * minute, until, beam: beam.id, work: 'tested' }],
  };
}

/** One or two fires that a logger of this interval can see. */
export function drawSmoke(setting: Setting, beam: BeamSetting): Smoke {
  const { start, end, intervalSeconds } = setting;
  const { draw } = beam;
  const count = draw.chance(0.3) ? 2 : 1;
  const fires: Fire[] = [];
  for (let k = 0; k < count; k++) {
    const from = start + ((k + draw.between(0.15, 0.85)) / count) * 0.95 * (end - start);
    fires.push(drawFire(setting, beam, Math.round(from), intervalSeconds));
  }
  return { effect: 'smoke', stream: `${beam.id}/smoke`, fires };
}

function drawFire({ ranges, end }: Setting, beam: BeamSetting, from: number, interval: number): Fire {
  const { draw } = beam;
  const growth = Math.max(draw.logBetween(...ranges.smokeGrowth), 2.5 * interval);
  const law = draw.weighted<Fire['law']>(
    growth > 600
      ? [
          ['smouldering', 5],
          ['smouldering-then-flaming', 3],
          ['flaming', 2],
        ]
      : [
          ['flaming', 6],
          ['smouldering', 2],
          ['smouldering-then-flaming', 1],
        ],
  );
  const left = Math.max((end - from) / 1000 - growth, 5 * interval);
  const hangs = draw.chance(0.1);
  const dither = draw.between(...ranges.smokeDither);
  return {
    from,
    law,
    growth,
    doublings: draw.between(3, 6.5),
    peak: atLeast(draw, decibels(Math.max(0.045, 1.4 * beam.fast)), ranges.smokePeak),
    stays: Math.min(Math.max(draw.logBetween(30, 5400), 5 * interval), left),
    clears: hangs ? Number.POSITIVE_INFINITY : Math.max(draw.logBetween(...ranges.smokeClears), 2 * interval),
    dither,
    ditherSeconds: draw.logBetween(3, 40),
  };
}

/** Missing or stuck samples. */
export function drawGap(setting: Setting, beam: BeamSetting, how: Gap['how']): Gap {
  const { start, end, intervalSeconds } = setting;
  const { draw } = beam;
  const least = Math.max(5 * minute, 30 * intervalSeconds * second) * 1.2;
  const most = Math.max(1.5 * least, Math.min(0.12 * (end - start), 12 * day));
  const count = draw.integer(1, 3);
  return {
    effect: 'gap',
    how,
    stretches: Array.from({ length: count }, (_, k) => {
      const from = within(setting, draw, (k + 0.08) / count, (k + 0.6) / count);
      const lasts = Math.min(draw.logBetween(least, most), (0.35 / count) * (end - start));
      return { from: Math.round(from), to: Math.round(from + lasts) };
    }),
  };
}

/** A step of the gain that no light made. */
export function drawGainStep(setting: Setting, beam: BeamSetting): GainStep {
  const { draw } = beam;
  return {
    effect: 'gain-step',
    time: Math.round(within(setting, draw, 0.3, 0.8) / hour) * hour,
    decibels: draw.chance(0.5) ? 'renormalised' : (draw.chance(0.5) ? 1 : -1) * draw.between(0.1, 0.8),
  };
}
