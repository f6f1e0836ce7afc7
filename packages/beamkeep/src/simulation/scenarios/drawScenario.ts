import { day, hour, minute } from '../../columns/index.js';
import { localClock } from '../clock.js';
import { type Dirt, dirtCourse } from '../effects/dirt.js';
import type { Effect } from '../effects/effect.js';
import { type Random, random } from '../random.js';
import { stepShare } from '../recording/unit.js';
import type { BeamPlan, Scenario, VisitPlan } from '../scenario.js';
import { type BareBeam, drawBeam } from './drawBeam.js';
import { drawRecording } from './drawRecording.js';
import { drawMovement } from './drawSlow.js';
import { drawGainStep } from './drawSudden.js';
import { bring, daysNeeded, type Happening, happenings, paces } from './happening.js';
import type { Ranges } from './ranges.js';
import type { BeamSetting, Setting } from './setting.js';
import { drawTiming, type Pace, type Timing } from './timing.js';
import { swingFor } from './turnFor.js';

/** What kind of log to draw, and what is settled beforehand. */
export interface Wish {
  readonly kind: Scenario['kind'];
  /** What happens to each beam; left out: drawn. */
  readonly happenings?: readonly (readonly Happening[])[];
  readonly timing?: Timing;
  readonly beams?: number;
  /** Most samples of a log with one beam; with more beams it is less. */
  readonly budget: number;
}

const rooms = [
  'stabling hall',
  'maintenance hall',
  'body shop',
  'wheel lathe',
  'wash hall',
  'parts store',
  'overhead line workshop',
  'sand and salt store',
  'paint bay',
  'bogie shop',
] as const;

/** Draws one scenario. */
export function drawScenario(ranges: Ranges, seed: number, wish: Wish): Scenario {
  const draw = random(seed, 'scenario');
  const plan = wish.happenings ?? drawHappenings(draw, wish);
  const count = plan.length;
  const main = plan.flat();
  const timing =
    wish.timing ??
    drawTiming(
      draw,
      paceFor(draw, wish.kind, main),
      Math.round(wish.budget / count ** 0.6),
      Math.max(0, ...main.map((one) => daysNeeded[one])),
    );
  const place = draw.pick(ranges.places as [Ranges['places'][number], ...Ranges['places'][number][]]);
  const start = drawStart(ranges, draw, timing);
  const length = timing.samples * timing.intervalSeconds * 1000;
  const calendar = {
    ...draw.pick(ranges.calendars as [Ranges['calendars'][number], ...Ranges['calendars'][number][]]),
    idle: draw.chance(0.6) ? draw.between(0, 0.12) : 0,
  };
  const setting: Setting = {
    seed,
    clock: localClock(place.timeZone, start - 8 * day, start + length + 8 * day),
    ranges,
    place,
    calendar,
    start,
    end: start + length,
    intervalSeconds: timing.intervalSeconds,
    days: length / day,
  };
  const recording = drawRecording(ranges, draw, timing.intervalSeconds);
  const names = columnNames(draw, count);
  const alike = random(seed, 'alike');
  // Beams of one hall hang at one height as a rule, and share its mist.
  const height = alike.chance(0.7) ? Math.round(alike.between(4, 18) * 2) / 2 : undefined;
  const visits: VisitPlan[] = [];
  const beams = plan.map((wanted, k): BeamPlan => {
    const id = `B${k + 1}`;
    const own = random(seed, id, 'beam');
    const bare = drawBeam(
      ranges,
      draw.chance(0.3) ? random(seed, 'one make', 0) : own,
      id,
      names[k] ?? `b${k + 1}`,
      recording.sampling === 'on-change',
    );
    const beam = beamSetting(bare, timing, random(seed, id, 'effects'));
    const effects: Effect[] = [];
    let built = {};
    for (const happening of wanted.filter((one) => setting.days >= daysNeeded[one])) {
      const brought = bring(happening, setting, beam, seed);
      effects.push(...brought.effects);
      visits.push(...brought.visits);
      built = { ...built, ...brought.built };
    }
    if (wish.kind === 'truncated') truncate(effects, setting, beam);
    if (!effects.some(({ effect }) => effect === 'movement') && own.chance(0.55) && setting.days > 1) {
      effects.push(drawMovement(setting, beam, true));
    }
    if (own.chance(0.03)) effects.push(drawGainStep(setting, beam));
    // A receiver whose gain may rise needs room above clean air.
    const gains = bare.gainControl !== undefined || effects.some(({ effect }) => effect === 'gain-step');
    const ceiling = gains ? Math.max(1.6, bare.ceiling) : bare.ceiling;
    const { gainControl, ...rest } = bare;
    const kept = wish.kind === 'truncated' || !gainControl ? rest : { ...rest, gainControl };
    return {
      ...kept,
      ...built,
      ...(height === undefined ? {} : { height }),
      ceiling,
      effects,
      untold: untoldKeys(own, alike, kept),
    };
  });
  const zoneMatters = ['local', 'day-first', 'month-first'].includes(recording.clock);
  const hasSide = draw.chance(0.5);
  return {
    name: `Tram depot, ${draw.pick(rooms)}`,
    kind: wish.kind,
    timeZone: place.timeZone,
    latitude: place.latitude + draw.between(-0.5, 0.5),
    longitude: place.longitude + draw.between(-0.5, 0.5),
    climate: place.climate,
    calendar,
    start,
    samples: timing.samples,
    intervalSeconds: timing.intervalSeconds,
    solarGain: draw.between(...ranges.solarGain),
    thermometerLag: draw.between(...ranges.thermometerLag),
    ...(hasSide
      ? {
          temperature: {
            column: draw.pick(['t_roof', 'T_steel', 'roof temperature', 'temp_degC']),
            step: draw.pick([0.1, 0.1, 0.5, 1]),
          },
        }
      : {}),
    ...(draw.chance(0.2)
      ? { humidity: { column: draw.pick(['rh', 'humidity', 'RH_optics']), step: draw.pick([0.1, 1]) } }
      : {}),
    ...(draw.chance(0.15) ? { plant: { column: draw.pick(['plant', 'running']), step: 1 } } : {}),
    recording: recording.longForm && count === 1 ? { ...recording, longForm: false } : recording,
    visits: [...visits, ...idleVisits(setting, draw)].sort((a, b) => a.time - b.time),
    beams: withSharedGaps(beams),
    untold: [
      ...(!zoneMatters && draw.chance(0.25) ? ['timeZone'] : []),
      ...(draw.chance(0.35) ? ['latitude', 'longitude'] : []),
      // Few know whether their logger averages.
      ...(recording.sampling === 'mean' && draw.chance(0.7) ? ['sampling'] : []),
    ],
  };
}

/** Happenings of each beam: what is common in a hall comes to several beams, the rest to one or two. */
function drawHappenings(draw: Random, { kind, beams }: Wish): Happening[][] {
  const count =
    beams ??
    draw.weighted([
      [1, 9],
      [2, 5],
      [3, 2],
      [4, 3],
    ]);
  const list: Happening[][] = Array.from({ length: count }, () => []);
  if (kind === 'healthy') return list;
  const wanted: Happening[] = [];
  if (kind === 'truncated')
    wanted.push('contamination', ...(draw.chance(0.45) ? (['building-movement'] as const) : []));
  else if (kind === 'single') wanted.push(draw.pick(happenings));
  else {
    const pace = draw.weighted<Pace>([
      ['slow', 4],
      ['medium', 1],
    ]);
    const possible = happenings.filter((one) => paces[one].some(([at]) => at === pace));
    const number = draw.integer(2, 4);
    while (wanted.length < number && wanted.length < possible.length) {
      const one = possible[draw.integer(0, possible.length - 1)];
      if (one && !wanted.includes(one)) wanted.push(one);
    }
  }
  for (const [k, beam] of list.entries()) {
    for (const one of wanted) {
      const common = ['condensation', 'process-aerosol', 'data-gap', 'contamination', 'building-movement'].includes(
        one,
      );
      if (k === 0 || draw.chance(common ? 0.65 : 0.3)) beam.push(one);
    }
  }
  return list;
}

function paceFor(draw: Random, kind: Scenario['kind'], main: readonly Happening[]): Pace {
  if (kind === 'truncated') return 'slow';
  if (main.length === 0) {
    return draw.weighted([
      ['slow', 4],
      ['medium', 2],
      ['fast', 1],
    ]);
  }
  const choices = (['slow', 'medium', 'fast'] as const).flatMap((pace) => {
    const weights = main.map((one) => paces[one].find(([at]) => at === pace)?.[1] ?? 0);
    const least = Math.min(...weights);
    return least > 0 ? [[pace, least] as const] : [];
  });
  return choices.length > 0 ? draw.weighted(choices) : 'slow';
}

/** Fast logs are taken while people work; slow ones begin at any minute of the year. */
function drawStart({ years }: Ranges, draw: Random, { intervalSeconds }: Timing): number {
  const from = Date.UTC(draw.integer(...years), 0, 1) + draw.integer(0, 364) * day;
  const grain = intervalSeconds < 60 ? minute : intervalSeconds * 1000;
  return (
    Math.round((from + draw.between(0, 24) * hour) / grain) * grain +
    (draw.chance(0.4) ? draw.integer(0, 59) * 1000 : 0)
  );
}

function beamSetting(bare: BareBeam, { intervalSeconds }: Timing, draw: Random): BeamSetting {
  const step = stepShare(bare);
  const { noise, wander } = bare.electronics;
  const sample = Math.hypot(noise, wander, step / Math.sqrt(12));
  const perHour = Math.max(1, Math.min(60, 3600 / intervalSeconds));
  const slow = Math.max(0.015, 3 * Math.hypot((1.25 * noise) / Math.sqrt(perHour), wander), 1.5 * step);
  return {
    id: bare.id,
    lobe: bare.lobe,
    offset: bare.offset,
    noise,
    step,
    slow,
    fast: Math.max(slow, 3 * sample),
    alarmThreshold: bare.alarmThreshold,
    draw,
  };
}

/** A cut log: at its end its dirt stands well below the alarm threshold, and its sway is small. */
function truncate(effects: Effect[], setting: Setting, beam: BeamSetting): void {
  const { draw, alarmThreshold, lobe, offset } = beam;
  for (const [k, effect] of effects.entries()) {
    if (effect.effect === 'movement') {
      const most = swingFor(lobe, offset, effect.direction, draw.between(1.1, 2.5) * beam.slow);
      effects[k] = { ...effect, swing: Math.min(effect.swing, most), aimedAt: 0.5 };
    } else if (effect.effect === 'dirt') {
      const { from: _, ...whole } = effect;
      const cleanings = effect.cleanings.slice(0, draw.chance(0.35) ? 1 : 0);
      const goal = alarmThreshold * draw.between(0.35, 0.82);
      const most = effect.most === undefined ? {} : { most: goal * draw.between(1.25, 3.2) };
      effects[k] = atRateFor(goal, { ...whole, before: Math.min(effect.before, 1), cleanings, ...most }, setting);
    }
  }
}

/** Dirt at the rate that brings it to so much obscuration [%] by the end of the log, by halving. */
function atRateFor(goal: number, dirt: Dirt, { seed, clock, calendar, start, end }: Setting): Dirt {
  let [low, high] = [0, 20];
  for (let k = 0; k < 18; k++) {
    const rate = (low + high) / 2;
    const reached = dirtCourse({ ...dirt, rate }, { seed, clock, calendar, start }, end).at(end);
    if (100 * reached < goal) low = rate;
    else high = rate;
  }
  return { ...dirt, rate: high };
}

/** Lines are lost for all beams at once: the first beam's gaps of lines are every beam's. */
function withSharedGaps(beams: readonly BeamPlan[]): BeamPlan[] {
  const isOfLines = (one: Effect) => one.effect === 'gap' && one.how === 'lines';
  const shared = beams[0]?.effects.filter(isOfLines) ?? [];
  return beams.map((beam, k) =>
    k === 0 ? beam : { ...beam, effects: [...beam.effects.filter((one) => !isOfLines(one)), ...shared] },
  );
}

/** Keys that nobody wrote into the site file. */
function untoldKeys(draw: Random, alike: Random, { unit, gainControl }: BareBeam): string[] {
  const often = (key: string, share: number) => (draw.chance(share) ? [key] : []);
  const habit = alike.uniform(); // a site file is thorough throughout, or it is not
  return [
    ...often('height', 0.3 + 0.6 * habit),
    ...often('bearing', 0.3 + 0.6 * habit),
    ...often('tilt', 0.4 + 0.6 * habit),
    ...often('halfAngle', 0.4 + 0.6 * habit),
    ...(unit === 'percent' ? often('signalUnit', 0.5) : []),
    ...often('cleanAir', unit === 'counts' || unit === 'millivolts' ? 0.12 : 0.25),
    ...often('covered', 0.4),
    ...often('latching', 0.8),
    ...often('faultThreshold', 0.5),
    ...often('alarmDelay', 0.5),
    ...often('faultDelay', 0.5),
    ...often('compensation', gainControl ? 0.5 : 0.8),
  ];
}

function columnNames(draw: Random, count: number): string[] {
  const style = draw.pick(['b', 'beam_', 'rx', 'level ', 'CH']);
  const letters = ['N', 'E', 'S', 'W'];
  return Array.from({ length: count }, (_, k) =>
    style === 'level ' ? `level ${letters[k] ?? k}` : `${style}${k + 1}`,
  );
}

/** Visits that change nothing: a reset, a beam cleaned that was clean. */
function idleVisits(setting: Setting, draw: Random): VisitPlan[] {
  if (!draw.chance(0.12)) return [];
  const time = Math.round((setting.start + draw.uniform() * (setting.end - setting.start)) / minute) * minute;
  return [{ time, beam: 'B1', work: draw.pick(['reset', 'tested', 'cleaned']) }];
}
