import { logOfText, UsageError } from 'beamkeep';
import {
  type Caution,
  mustShow,
  type ProofJson,
  type ProofPlanJson,
  type ProofSheet,
  parseProofSheet,
  proofPlan,
  proofVerdictWords,
  prove,
  stageCautions,
  textTable,
  usualSteps,
} from 'beamkeep/commissioning';
import { beamNamed } from 'beamkeep/log';
import type { Site } from 'beamkeep/site';
import type { SmallFile } from './reading.js';

/** What is asked of a proof. */
export interface ProofAsked {
  readonly beam: string;
  /** The proof sheet (JSON); null: the usual steps. */
  readonly sheet: SmallFile | null;
  /** When steps were done, by their row in the sheet, as written down; empty where nothing was. */
  readonly times: readonly string[];
}

/** What is asked of a logged test. */
export interface TestAsked extends ProofAsked {
  readonly test: SmallFile;
  /** The panel's own list. */
  readonly events: SmallFile | null;
  /** By how much the panel's clock runs ahead of the logger's [s]. */
  readonly clockOffsetSeconds: number;
}

/** A proof sheet, ready to be carried on the lift. */
export interface PlanTold {
  readonly plan: ProofPlanJson;
  /** What each step must show, in words. */
  readonly mustShow: readonly string[];
  /** What to mind before, during and after the test. */
  readonly cautions: readonly Caution[];
}

/** How a proof came out. */
export interface ProofTold {
  readonly proof: ProofJson;
  /** The verdict over the whole, in words. */
  readonly verdict: string;
}

/**
 * What each step must show on this site.
 *
 * @throws UsageError for a sheet that cannot be used, or one of another beam
 */
export function planTold(asked: ProofAsked, site: Site): PlanTold {
  const plan = proofPlan(sheetOf(asked, site), site);
  return { plan, mustShow: plan.steps.map(mustShow), cautions: stageCautions('prove') };
}

/**
 * How a logged test came out.
 *
 * @throws UsageError where the sheet, the log or the panel's list cannot be used
 */
export async function proofTold(asked: TestAsked, site: Site): Promise<ProofTold> {
  const { test, events, clockOffsetSeconds } = asked;
  const proof = await prove(logOfText(test.text, test.name), site, sheetOf(asked, site), {
    events: events ? textTable(events.text, events.name) : undefined,
    clockOffsetSeconds,
  });
  return { proof, verdict: proofVerdictWords[proof.verdict] };
}

/** The sheet with the times that were written down. */
function sheetOf({ beam, sheet, times }: ProofAsked, site: Site): ProofSheet {
  const read = sheet ? parseProofSheet(sheet.text, sheet.name) : usualSteps(beamNamed(site, beam));
  if (read.beam !== beam)
    throw new UsageError(`${sheet?.name} is a sheet of beam ${read.beam}: choose that beam, or another sheet`);
  const steps = read.steps.map((step, row) => (times[row] ? { ...step, time: times[row] } : step));
  return { ...read, steps };
}
