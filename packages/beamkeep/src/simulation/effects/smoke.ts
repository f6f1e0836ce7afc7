import { rowAt, second } from '../../columns/index.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/*
 * Smoke across a beam, in three acts: it grows (by the square of time when flaming, by doubling when smouldering, or
 * smouldering first and then in flame), it stays, and it clears slowly or not at all. Turbulence makes it dither: the
 * loss is multiplied by a log-normal that wanders within seconds, as measured beams do.
 *
 * Source of the shapes: Q = alpha t^2 (design fires, NFPA 204); doubling every 116 to 617 s in smouldering chairs
 * (NIST TN 1455-1, Table 18); dithering and slow clearing of the FAA cargo compartment beams.
 */

/** One fire. */
export interface Fire {
  /** When its smoke first reaches the beam [ms]. */
  readonly from: number;
  readonly law: 'flaming' | 'smouldering' | 'smouldering-then-flaming';
  /** From first smoke to full loss [s]. */
  readonly growth: number;
  /** Doublings within the growth of a smouldering fire. */
  readonly doublings: number;
  /** Loss at full smoke [dB]. */
  readonly peak: number;
  /** How long it stays there [s]. */
  readonly stays: number;
  /** How long it then takes to clear to a third [s]; infinite: it hangs. */
  readonly clears: number;
  /** Spread of the dithering, as a share of the loss. */
  readonly dither: number;
  /** How fast it dithers [s]. */
  readonly ditherSeconds: number;
}

/** Smoke. */
export interface Smoke {
  readonly effect: 'smoke';
  readonly stream: string;
  /** In order of time. */
  readonly fires: readonly Fire[];
}

/** Share of its full loss that a fire has reached, so many seconds after its first smoke. */
export function course(fire: Fire, seconds: number): number {
  if (seconds <= 0) return 0;
  const { growth, doublings, stays, clears } = fire;
  if (seconds < growth) {
    const done = seconds / growth;
    const doubled = (2 ** (doublings * done) - 1) / (2 ** doublings - 1);
    switch (fire.law) {
      case 'flaming':
        return done * done;
      case 'smouldering':
        return doubled;
      case 'smouldering-then-flaming':
        return done < 0.7
          ? (0.25 * (2 ** (doublings * (done / 0.7)) - 1)) / (2 ** doublings - 1)
          : 0.25 + 0.75 * ((done - 0.7) / 0.3) ** 2;
    }
  }
  if (seconds < growth + stays) return 1;
  return Math.exp(-(seconds - growth - stays) / clears);
}

/** When the last of a fire's smoke is gone [ms]. */
const gone = ({ from, growth, stays, clears }: Fire): number =>
  from + (growth + stays + (Number.isFinite(clears) ? 7 * clears : Number.POSITIVE_INFINITY)) * second;

/** Share of a fire's full loss from which its smoke still stands in the beam. Own choice. */
const stillStands = 0.5;

/** Each fire's own stretch; one for fires of which a later begins in the smoke of an earlier: no signal could part them. */
function episodes(fires: readonly Fire[]): Window[] {
  const found: { from: number; to: number }[] = [];
  fires.forEach((fire, k) => {
    const before = fires[k - 1];
    const stood = before === undefined ? 0 : course(before, (fire.from - before.from) / second);
    const last = found.at(-1);
    if (last !== undefined && stood >= stillStands) last.to = Math.max(last.to, gone(fire));
    else {
      if (last !== undefined) last.to = Math.min(last.to, fire.from - 1);
      found.push({ from: fire.from, to: gone(fire) });
    }
  });
  return found;
}

/** What smoke does to a beam. */
export function smoke(plan: Smoke, scene: Scene): Part<Smoke> {
  const { time } = scene;
  const loss = new Float32Array(time.length);
  plan.fires.forEach((fire, k) => {
    const draw = random(scene.seed, plan.stream, k);
    const end = gone(fire);
    let wisp = 0;
    let last = fire.from;
    for (let i = rowAt(time, fire.from); i < time.length && (time[i] as number) <= end; i++) {
      const instant = time[i] as number;
      const keep = Math.exp(-(instant - last) / (fire.ditherSeconds * second));
      last = instant;
      wisp = keep * wisp + Math.sqrt(1 - keep * keep) * draw.normal();
      const dither = Math.exp(fire.dither * wisp - fire.dither ** 2 / 2);
      loss[i] = (loss[i] as number) + fire.peak * course(fire, (instant - fire.from) / second) * dither;
    }
  });
  return { effect: plan, cause: 'smoke-like', windows: episodes(plan.fires), loss };
}
