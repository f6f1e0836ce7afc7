import { aim } from './aim.js';
import { UsageError } from './columns/index.js';
import {
  type BeamAnswers,
  type CommissioningDay,
  type CommissioningRecord,
  type DayBeam,
  type FindingOut,
  instantOut,
  type PointOut,
  parseProofSheet,
  recordOf,
  usualSteps,
} from './commissioning/index.js';
import { covered } from './covered.js';
import type { DiagnosisJson } from './diagnose.js';
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
 * @param diagnosis what `diagnose` says of the day's log: findings that ask for someone to go stand in the record, as not
 * yet looked at; left out: no findings, and the log is read for its period alone
 * @returns the record; a test that cannot be used is told in it and counts as missing
 * @throws UsageError for a beam that the site does not have, or that is named twice
 */
export async function record(
  day: CommissioningDay,
  site: Site,
  files: DayFiles,
  made: number,
  diagnosis?: DiagnosisJson,
): Promise<CommissioningRecord> {
  const events = day.events === undefined ? undefined : textTable(await files.text(day.events), day.events);
  const answers = new Map<string, BeamAnswers>();
  const troubles: PointOut[] = [];
  for (const work of day.beams) {
    const { id } = beamNamed(site, work.id);
    if (answers.has(id)) throw new UsageError(`beam ${id} stands twice in the day file: put its work together`);
    answers.set(id, await answersOf(work, day, site, files, events, troubles));
  }
  const log = diagnosis ? periodTold(diagnosis) : await periodRead(day.log ?? [], site, files);
  return recordOf(day, site, { answers, troubles, log, findings: diagnosis ? findingsOf(diagnosis) : null, made });
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

/** Findings that ask for someone to go; nobody has looked yet. */
const findingsOf = ({ beams }: DiagnosisJson): FindingOut[] =>
  beams.flatMap(({ id: beam, findings }) =>
    findings
      .filter(({ severity }) => severity === 'act')
      .map(({ cause, severity, confidence, start, end, summary }) => ({
        beam,
        cause,
        severity,
        confidence,
        start,
        end,
        summary,
        onSite: null,
      })),
  );

/** From when to when the beams of a diagnosed log were seen. */
function periodTold({ beams, input: { lines, dropped } }: DiagnosisJson): CommissioningRecord['log'] {
  const from = beams.flatMap((beam) => beam.from ?? []).sort()[0];
  const to = beams
    .flatMap((beam) => beam.to ?? [])
    .sort()
    .at(-1);
  return from === undefined || to === undefined ? null : { from, to, lines, dropped };
}

/** From when to when a log reaches, and how it could be read. */
async function periodRead(names: readonly string[], site: Site, files: DayFiles): Promise<CommissioningRecord['log']> {
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
