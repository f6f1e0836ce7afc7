import type { BeamRecord, Channel } from '../../packages/beamkeep/src/columns/index.js';
import { day, hour } from '../../packages/beamkeep/src/columns/index.js';
import { type BeamDiagnosis, diagnoseBeams } from '../../packages/beamkeep/src/diagnosis/diagnoseBeams.js';
import type { CauseWord, Finding } from '../../packages/beamkeep/src/diagnosis/finding.js';
import type { Picture } from '../../packages/beamkeep/src/diagnosis/picture.js';
import { type View, view } from '../../packages/beamkeep/src/diagnosis/view.js';
import { random } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite, type Site } from '../../packages/beamkeep/src/site/index.js';

/*
 * Invented beams, made from a function of time: what is put in is known exactly, so that what comes out can be compared.
 */

/** A Monday, at midnight. */
export const monday = Date.UTC(2027, 0, 4);

/** How a beam is sampled. */
export interface Sampled {
  readonly days: number;
  /** [s]; 300 when left out */
  readonly intervalSeconds?: number;
  /** First instant [ms]; a Monday's midnight when left out. */
  readonly start?: number;
  /** Spread of single samples, share of clean air; 0.001 when left out. */
  readonly noise?: number;
  readonly seed?: number;
  /** Smallest step of the reading, share of clean air; none when left out. */
  readonly quantum?: number;
  /** Temperature near the structure at an instant [degC]. */
  readonly temperature?: (instant: number) => number;
}

/**
 * A record of one beam that holds every sample.
 *
 * @param level share of clean air at an instant; NaN leaves the sample out
 */
export function recordOf(
  level: (instant: number) => number,
  { days, intervalSeconds = 300, start = monday, noise = 0.001, seed = 1, quantum = 0, temperature }: Sampled,
): BeamRecord {
  const { normal } = random(seed);
  const instants: number[] = [];
  const levels: number[] = [];
  const rows = Math.round((days * day) / (intervalSeconds * 1000));
  for (let i = 0; i < rows; i++) {
    const instant = start + i * intervalSeconds * 1000;
    const read = level(instant) + noise * normal();
    if (Number.isNaN(read)) continue;
    instants.push(instant);
    levels.push(quantum > 0 ? Math.round(read / quantum) * quantum : read);
  }
  const time = Float64Array.from(instants);
  const single = Float32Array.from(levels);
  const trace = {
    time,
    until: time,
    level: Float64Array.from(levels),
    low: single,
    high: single,
    spread: new Float32Array(time.length),
    count: new Uint32Array(time.length).fill(1),
  };
  const beside: { temperature?: Channel } =
    temperature === undefined ? {} : { temperature: { time, value: time.map(temperature) } };
  return { id: 'B1', trace, intervalSeconds, quantum, assumed: [], ...beside };
}

/** A site with one reflective beam, the defaults filled in, and what is given instead of them. */
export const siteOf = (beam: object = {}, head: object = {}): Site =>
  parseSite({
    format: 'beamkeep-site/1',
    ...head,
    beams: [{ id: 'B1', layout: 'reflective', separation: 50, ...beam }],
  });

/** What is found on the only beam of a record. */
export function diagnosed(record: BeamRecord, site: Site = siteOf()): BeamDiagnosis {
  const [only] = diagnoseBeams([record], site);
  if (only === undefined) throw new Error('no beam came back');
  return only;
}

/** What is measured on the only beam of a record. */
export function pictured(record: BeamRecord, site: Site = siteOf()): Picture {
  const { picture } = diagnosed(record, site);
  if (picture === undefined) throw new Error('the record holds no sample');
  return picture;
}

/** A record made ready. */
export function viewed(record: BeamRecord, site: Site = siteOf()): View {
  const [beam] = site.beams;
  const made = beam === undefined ? undefined : view(record, beam, site);
  if (made === undefined) throw new Error('the record holds no sample');
  return made;
}

/** Findings of a cause; of smoke all, of any other those that are statements. */
export const stated = ({ findings }: Pick<BeamDiagnosis, 'findings'>, cause: CauseWord): Finding[] =>
  findings.filter((f) => f.cause === cause && (cause === 'smoke-like' || f.confidence >= 0.5));

/** The only finding of a cause. */
export function theOne(diagnosis: Pick<BeamDiagnosis, 'findings'>, cause: CauseWord): Finding {
  const [one, second] = stated(diagnosis, cause);
  if (one === undefined) throw new Error(`no ${cause} among ${told(diagnosis)}`);
  if (second !== undefined) throw new Error(`more than one ${cause} among ${told(diagnosis)}`);
  return one;
}

/** What was found, in short, for a message. */
export const told = ({ findings }: Pick<BeamDiagnosis, 'findings'>): string =>
  findings.map((f) => `${f.cause} ${f.confidence} ${iso(f.start)} to ${iso(f.end)}`).join('; ');

/** A number of the evidence. */
export function measured({ evidence, cause }: Finding, measure: string, unit?: string): number {
  const line = evidence.find((e) => e.measure === measure && (unit === undefined || e.unit === unit));
  if (line === undefined)
    throw new Error(`${cause} tells no "${measure}": ${evidence.map((e) => e.measure).join(', ')}`);
  return line.value;
}

export const iso = (instant: number): string => new Date(instant).toISOString();

/** Hour of the day in UTC, 0 to 24. */
export const hourOf = (instant: number): number => (((instant % day) + day) % day) / hour;
/** Number of the day of a log that begins on `monday`. */
export const dayOf = (instant: number): number => Math.floor((instant - monday) / day);
/** An instant of such a log. */
export const at = (days: number, hours = 0): number => monday + days * day + hours * hour;

/** Share of the light that is left after a loss [dB]. */
export const left = (decibels: number): number => 10 ** (-decibels / 10);

/** 0 before `from`, 1 after `to`, a smooth rise between. */
export function rise(x: number, from: number, to: number): number {
  const share = Math.min(1, Math.max(0, (x - from) / (to - from)));
  return 0.5 - 0.5 * Math.cos(Math.PI * share);
}

/** A number of its own for each whole number, evenly from 0 to 1: chance that a function of time can ask for. */
export function chanceOf(n: number, seed = 1): number {
  return random(seed, n).uniform();
}

/** A number of its own for each whole number, normal with spread 1. */
export function normalOf(n: number, seed = 1): number {
  return random(seed, n).normal();
}
