import { beamLight } from './beamLight.js';
import { at } from './grid.js';
import { random } from './random.js';
import { type Column, lines } from './recording/lines.js';
import { mishaps } from './recording/mishaps.js';
import { siteFile } from './recording/siteFile.js';
import { inUnit } from './recording/unit.js';
import type { BeamPlan, Scenario } from './scenario.js';
import { type Scene, scene } from './scene.js';
import { beamTruth } from './truth/beamTruth.js';
import type { BeamTruth, TruthFile } from './truth/truthFile.js';

/** One beam of a simulated log, as arrays. */
export interface SimulatedBeam {
  readonly id: string;
  /** Readings in the beam's unit; NaN where missing. */
  readonly reading: Float64Array;
  /** The equipment's gain [dB]; undefined without gain control. */
  readonly gain?: Float64Array;
  readonly truth: BeamTruth;
}

/** A simulated log. */
export interface Simulation {
  readonly scenario: Scenario;
  /** Instants of the samples [ms], those of lost lines included. */
  readonly time: Float64Array;
  readonly beams: readonly SimulatedBeam[];
  /** The site file, as an object to be written as JSON. */
  readonly site: Record<string, unknown>;
  /** Lines that the log has. */
  readonly rows: number;
  /** The lines of the log, header first, each with its line end. */
  lines(): Generator<string>;
  /** The truth file; the arguments name the files it speaks of. */
  truth(log: string, site: string): TruthFile;
}

/**
 * A log of beams from the physics of light, dirt, aim, weather and work, with its truth.
 *
 * @param scenario everything about the log except chance
 * @param seed whole number: the same scenario and seed give the same log, byte for byte
 */
export function simulate(scenario: Scenario, seed: number): Simulation {
  const set = scene(scenario, seed);
  const fate = mishaps(set);
  const whole = wholeLines(scenario, set);
  for (let i = 0; i < whole.length; i++) if (whole[i] === 1) [fate.gone[i], fate.broken[i]] = [1, 0];
  const beams = scenario.beams.map((beam) => simulateBeam(beam, set, fate.gone));
  const columns = [...beamColumns(scenario, beams)];
  const side = sideColumns(set);
  const ordered = scenario.recording.sideFirst ? [...side, ...columns] : [...columns, ...side];
  return {
    scenario,
    time: set.time,
    beams,
    site: siteFile(scenario),
    rows: set.time.length - fate.gone.reduce((sum, value) => sum + value, 0),
    lines: () => lines(set, ordered, fate),
    truth: (log, site) => ({
      format: 'beamkeep-truth/1',
      invented: true,
      log,
      site,
      kind: scenario.kind,
      samplingSeconds: scenario.intervalSeconds,
      beams: beams.map(({ truth }) => truth),
    }),
  };
}

/** 1 where a gap of whole lines takes every beam's reading. */
function wholeLines({ beams }: Scenario, { time }: Scene): Uint8Array {
  const mask = new Uint8Array(time.length);
  for (const { effects } of beams) {
    for (const effect of effects) {
      if (effect.effect !== 'gap' || effect.how !== 'lines') continue;
      for (let i = 0; i < time.length; i++) {
        const instant = time[i] as number;
        if (effect.stretches.some(({ from, to }) => instant >= from && instant <= to)) mask[i] = 1;
      }
    }
  }
  return mask;
}

function simulateBeam(beam: BeamPlan, set: Scene, gone: Uint8Array): SimulatedBeam {
  const light = beamLight(beam, set);
  const seen = gone.map((value) => 1 - value);
  const reading = new Float64Array(seen.length);
  let held = Number.NaN;
  for (let i = 0; i < seen.length; i++) {
    const value = inUnit(beam, light.reading[i] as number);
    const stuck = light.parts.some((part) => part.held?.[i] === 1);
    const missing = light.parts.some((part) => part.missing?.[i] === 1);
    if (missing) seen[i] = 0;
    held = stuck && !Number.isNaN(held) ? held : value;
    reading[i] = missing ? Number.NaN : held;
  }
  return {
    id: beam.id,
    reading,
    ...(light.gain ? { gain: light.gain } : {}),
    truth: beamTruth(set, beam, light, seen),
  };
}

function* beamColumns({ beams, recording }: Scenario, simulated: readonly SimulatedBeam[]): Generator<Column> {
  for (const [k, beam] of beams.entries()) {
    const { reading, gain } = simulated[k] as SimulatedBeam;
    yield { name: beam.column, values: reading, step: beam.step, percent: recording.percentSign };
    if (gain && beam.gainControl?.column !== undefined) {
      const values = gain.map((value) => Math.round(value * 100) / 100);
      yield { name: beam.gainControl.column, values, step: 0.01, percent: false };
    }
  }
}

function sideColumns({ scenario, time, structure, weather, shifts, seed }: Scene): Column[] {
  const { temperature, humidity, plant } = scenario;
  const columns: Column[] = [];
  const add = (channel: { column: string; step: number }, of: (instant: number) => number) => {
    const values = Float64Array.from(time, (instant) => Math.round(of(instant) / channel.step) * channel.step);
    columns.push({ name: channel.column, values, step: channel.step, percent: false });
  };
  if (temperature) {
    const draw = random(seed, 'thermometer');
    const off = draw.normal();
    add(temperature, (instant) => at(structure, instant) + off + 0.15 * draw.normal());
  }
  if (humidity) {
    const draw = random(seed, 'hygrometer');
    const off = 2 * draw.normal();
    add(humidity, (instant) => {
      const [air, dew] = [at(weather.air, instant), at(weather.dewPoint, instant)];
      // Magnus formula; coefficients of Sonntag 1990, from memory.
      const pressure = (t: number) => Math.exp((17.62 * t) / (243.12 + t));
      return Math.max(
        5,
        Math.min(100, (100 * pressure(Math.min(dew, air))) / pressure(air) + off + 0.4 * draw.normal()),
      );
    });
  }
  if (plant) {
    let next = 0;
    add(plant, (instant) => {
      while (next < shifts.length - 1 && instant > (shifts[next]?.to ?? 0)) next++;
      const shift = shifts[next];
      return shift && instant >= shift.from && instant <= shift.to ? 1 : 0;
    });
  }
  return columns;
}
