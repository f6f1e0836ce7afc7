import { rowAt } from '../columns/index.js';
import type { EffectPart } from './effects/effect.js';
import { part } from './effects/index.js';
import { hiss } from './electronics.js';
import { gainOf } from './gainControl.js';
import { aimLoss } from './lobe.js';
import type { BeamPlan } from './scenario.js';
import type { Scene } from './scene.js';

/*
 * The light of one beam, put together from its effects:
 *
 *     level = smoke · dirt · aim · film · block + ambient + noise           [share of the clean-air span]
 *     reading = (covered + (1 - covered) · level) · gain                    [share of the clean-air reading]
 *
 * Losses are added in decibels, turns of the head as vectors before the lobe makes one loss of them. What one cause
 * takes is the level without it minus the level with it, everything else as it was.
 */

/** One beam's light, and what it would be without this or that. */
export interface BeamLight {
  readonly parts: readonly EffectPart[];
  /** Level as the equipment reports it, without noise [share of the clean-air span]. */
  readonly level: Float64Array;
  /** Reading [share of the clean-air reading], noise and gain included; before steps and units. */
  readonly reading: Float64Array;
  /** The equipment's gain [dB]; undefined without gain control. */
  readonly gain?: Float64Array;
  /** The healthy beam's own noise [share of clean air]. */
  readonly noise: Float32Array;
  /** What some parts take: level without them minus level with them [share of the clean-air span]. */
  taken(parts: readonly EffectPart[]): Float64Array;
}

/** Puts one beam's light together. */
export function beamLight(beam: BeamPlan, scene: Scene): BeamLight {
  const { time } = scene;
  const count = time.length;
  const parts: EffectPart[] = [];
  const late = beam.effects.filter(({ effect }) => effect === 'gain-step');
  for (const effect of beam.effects) if (!late.includes(effect)) parts.push(part(effect, beam, scene, () => 0));
  const { drift, noise } = hiss(beam.electronics, scene, beam.id);
  const zero = aimLoss(beam.lobe, beam.offset[0], beam.offset[1]);

  const lossWithout = (left: readonly EffectPart[]) => {
    const loss = new Float64Array(count);
    const turns = parts.filter(({ turn }) => turn).filter((one) => !left.includes(one));
    for (const one of parts) {
      if (!one.loss || left.includes(one)) continue;
      for (let i = 0; i < count; i++) loss[i] = (loss[i] as number) + (one.loss[i] as number);
    }
    if (turns.length === 0) return loss;
    for (let i = 0; i < count; i++) {
      let [x, y] = beam.offset;
      for (const { turn } of turns) {
        if (!turn) continue;
        x += turn[0][i] as number;
        y += turn[1][i] as number;
      }
      loss[i] = (loss[i] as number) + aimLoss(beam.lobe, x, y) - zero;
    }
    return loss;
  };
  const full = lossWithout([]);
  for (const effect of late) {
    parts.push(part(effect, beam, scene, (instant) => full[Math.min(rowAt(time, instant), count - 1)] ?? 0));
  }

  const levelWithout = (left: readonly EffectPart[], loss: Float64Array) => {
    const level = new Float64Array(count);
    for (let i = 0; i < count; i++) level[i] = 10 ** (-(loss[i] as number) / 10) * (1 + (drift[i] as number));
    for (const { light } of parts.filter((one) => one.cause === 'ambient-light' && !left.includes(one))) {
      if (light) for (let i = 0; i < count; i++) level[i] = Math.max(0, (level[i] as number) + (light[i] as number));
    }
    const most = (beam.ceiling - beam.covered) / (1 - beam.covered);
    for (let i = 0; i < count; i++) level[i] = Math.min(level[i] as number, most);
    return level;
  };
  const steps = parts.filter(({ gain }) => gain);
  const amplified = (bare: Float64Array) => {
    const gain = beam.gainControl ? gainOf(beam.gainControl, time, bare) : undefined;
    if (!gain && steps.length === 0) return { level: bare, gain };
    const level = bare.map((value, i) => {
      const decibels = (gain?.[i] ?? 0) + steps.reduce((sum, one) => sum + (one.gain?.[i] ?? 0), 0);
      const factor = 10 ** (decibels / 10);
      return (factor * (beam.covered + (1 - beam.covered) * value) - beam.covered) / (1 - beam.covered);
    });
    return { level, gain };
  };
  const bare = levelWithout([], full);
  const { level, gain } = amplified(bare);

  const interference = parts.filter(({ cause }) => cause === 'electrical-noise');
  const reading = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const decibels = (gain?.[i] ?? 0) + steps.reduce((sum, one) => sum + (one.gain?.[i] ?? 0), 0);
    let hum = noise[i] as number;
    for (const { light } of interference) hum += light?.[i] ?? 0;
    const exact = beam.covered + (1 - beam.covered) * ((level[i] as number) + hum * 10 ** (decibels / 10));
    reading[i] = Math.min(exact, beam.ceiling);
  }
  return {
    parts,
    level,
    reading,
    ...(gain ? { gain } : {}),
    noise,
    taken: (left) => {
      const without = amplified(levelWithout(left, lossWithout(left))).level;
      for (let i = 0; i < count; i++) without[i] = (without[i] as number) - (level[i] as number);
      return without;
    },
  };
}
