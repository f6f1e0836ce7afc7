import { aim } from './aim.js';
import { UsageError } from './columns/index.js';
import {
  type BeamAnswers,
  type CommissioningDay,
  type CommissioningRecord,
  type DayBeam,
  instantOut,
  type PointOut,
  parseProofSheet,
  recordOf,
  usualSteps,
} from './commissioning/index.js';
import { covered } from './covered.js';
import { beamNamed, type LogSource, readRows, type TextTable, textTable } from './log/index.js';
import { prove } from './prove.js';
import type { Site } from './site/index.js';

/** How the files that a day names are reached: by name, as the day file writes it. */
export interface DayFiles {
  /** A log, to be read as a stream. */
  log(name: string): Promise<LogSource>;
  /** A small file as a whole. */
  text(name: string): Promise<string>;
}

/**
 * Answers every question of a commissioning day, and gathers the record.
 *
 * @param day what belongs to which beam, and what people wrote down
 * @param site settings of the beams
 * @param files how the named files are reached
 * @param made when the record is made [ms since 1970-01-01 UTC]
 * @returns the record; a test that cannot be used is told in it and counts as missing
 * @throws UsageError for a beam that the site does not have, or that is named twice
 */
export async function record(
  day: CommissioningDay,
  site: Site,
  files: DayFiles,
  made: number,
): Promise<CommissioningRecord> {
  const events = day.events === undefined ? undefined : textTable(await files.text(day.events), day.events);
  const answers = new Map<string, BeamAnswers>();
  const troubles: PointOut[] = [];
  for (const work of day.beams) {
    const { id } = beamNamed(site, work.id);
    if (answers.has(id)) throw new UsageError(`beam ${id} stands twice in the day file: put its work together`);
    answers.set(id, await answersOf(work, day, site, files, events, troubles));
  }
  return recordOf(day, site, { answers, troubles, log: await periodOf(day.log ?? [], site, files), made });
}

async function answersOf(
  { id, scan, left, angleUnit, structure, covered: test, proof }: DayBeam,
  { clockOffsetSeconds }: CommissioningDay,
  site: Site,
  files: DayFiles,
  events: TextTable | undefined,
  troubles: PointOut[],
): Promise<BeamAnswers> {
  /** An answer, or nothing and a word of why. */
  const attempted = async <T>(what: string, answer: () => Promise<T>): Promise<T | undefined> => {
    try {
      return await answer();
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      troubles.push({ beam: id, words: `${what}: could not be used. ${error.message}` });
      return undefined;
    }
  };
  return {
    aim:
      scan === undefined
        ? undefined
        : await attempted('aim scan', async () =>
            aim(textTable(await files.text(scan), scan), site, { beam: id, left, angleUnit, structure }),
          ),
    covered:
      test === undefined
        ? undefined
        : await attempted('covered test', async () => covered(await files.log(test), site, { beam: id })),
    proof:
      proof === undefined
        ? undefined
        : await attempted('proof', async () => {
            const { sheet } = proof;
            const steps =
              sheet === undefined ? usualSteps(beamNamed(site, id)) : parseProofSheet(await files.text(sheet), sheet);
            if (steps.beam !== id) throw new UsageError(`${sheet} is a sheet of beam ${steps.beam}`);
            return prove(await files.log(proof.log), site, steps, { events, clockOffsetSeconds });
          }),
  };
}

/** From when to when a log reaches, and how it could be read. */
async function periodOf(names: readonly string[], site: Site, files: DayFiles): Promise<CommissioningRecord['log']> {
  if (names.length === 0) return null;
  let [from, to] = [Number.NaN, Number.NaN];
  const sources = await Promise.all(names.map((name) => files.log(name)));
  const { lines, dropped } = await readRows(sources, site, {
    header() {},
    rows({ time, count }) {
      if (Number.isNaN(from)) from = time[0] as number;
      to = time[count - 1] as number;
    },
    end() {},
  });
  return { from: instantOut(from), to: instantOut(to), lines, dropped };
}
