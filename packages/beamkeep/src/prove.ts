import { UsageError } from './columns/index.js';
import {
  evenRows,
  expectedSteps,
  type ProofJson,
  type ProofPlanJson,
  type ProofSheet,
  panelList,
  planAnswer,
  proofAnswer,
  proofOf,
  thinned,
} from './commissioning/index.js';
import { beamNamed, type LogSources, type ReadOptions, readReadings, type TextTable } from './log/index.js';
import { readingObscuration, resetsOf } from './response/index.js';
import { bearsOnResponse, instantOf, quoted, type Site } from './site/index.js';

/** What is known beside the log. */
export interface ProofQuestion {
  /** The panel's list, with columns time, beam, what. */
  readonly events?: TextTable | undefined;
  /** By how much the panel's clock runs ahead of the logger's [s]. */
  readonly clockOffsetSeconds?: number | undefined;
  /** From when to when, where the log is longer than the test [ms]. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/**
 * What each step of a proof sheet must show on this site, before anything is done.
 *
 * @throws UsageError for a beam that the site does not have, or a step that lacks what it needs
 */
export function proofPlan(sheet: ProofSheet, site: Site): ProofPlanJson {
  const beam = beamNamed(site, sheet.beam);
  return planAnswer({ ...sheet, beam: beam.id }, expectedSteps(sheet, beam), beam.assumed.filter(bearsOnResponse));
}

/**
 * Finds each step of a proof sheet in a logged test, and says pass or fail with reasons.
 *
 * @param sources the log of the test
 * @param site the site: settings of the beam, visits with work "reset"
 * @param sheet the steps, in order
 * @param question the panel's list and its clock; a part of the log
 * @throws UsageError where log, sheet or list cannot be used
 * @example (await prove(logOfText(csv), site, usualSteps(beam))).verdict // pass
 */
export async function prove(
  sources: LogSources,
  site: Site,
  sheet: ProofSheet,
  { events, clockOffsetSeconds, from, to }: ProofQuestion = {},
  options: ReadOptions = {},
): Promise<ProofJson> {
  const times = sheet.steps.map((step, row) => writtenTime(step.time, row, site.timeZone));
  const panel = events && panelList(events, site, sheet.beam, clockOffsetSeconds);
  const log = await readReadings(sources, site, { beam: sheet.beam, from, to }, options);
  const { beam, time, end, intervalSeconds } = log;
  const logged = { time, obscuration: log.readings.map(readingObscuration(beam)) };
  const even = site.sampling === 'on-change' ? evenRows(time, logged.obscuration, end) : undefined;
  const seen = even ? { time: even.time, obscuration: even.values } : logged;
  const told = [
    ...resetsOf(site.visits, beam.id),
    ...(panel ?? []).flatMap((e) => (e.what === 'reset' ? [e.time] : [])),
  ];
  const proof = proofOf(sheet, beam, {
    logged,
    even: seen,
    sampling: site.sampling,
    intervalSeconds,
    end,
    times,
    resets: told.sort((a, b) => a - b),
    ...(panel && { panel }),
  });
  return proofAnswer(beam.id, proof, {
    panelList: panel !== undefined,
    trace: thinned(seen.time, seen.obscuration, 2),
    assumed: [...beam.assumed.filter(bearsOnResponse), ...log.assumed],
    input: log.input,
  });
}

function writtenTime(text: string | undefined, row: number, timeZone: string): number {
  if (text === undefined) return Number.NaN;
  const read = instantOf(text, timeZone);
  if ('instant' in read) return read.instant;
  throw new UsageError(`steps[${row}].time is ${quoted(text)}: write date and time as in 2027-03-02T09:00:00Z`);
}
