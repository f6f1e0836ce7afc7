import { logOfText, UsageError } from 'beamkeep';
import {
  aim,
  type BeamAnswers,
  type CommissioningDay,
  type CommissioningRecord,
  covered,
  type FindingOut,
  type PointOut,
  recordOf,
  recordPage,
  type Structure,
  textTable,
} from 'beamkeep/commissioning';
import type { Site } from 'beamkeep/site';
import { proofTold, type TestAsked } from './proofTold.js';
import type { SmallFile } from './reading.js';

/** What was done to a beam, as a cell of the sheet has it. */
export type BeamWork = {
  /** Number of the cell on the page. */
  readonly number: number;
  readonly beam: string;
} & (
  | { readonly kind: 'aim'; readonly scan: SmallFile; readonly left: readonly number[]; readonly structure: Structure }
  | { readonly kind: 'covered'; readonly test: SmallFile }
  | { readonly kind: 'proof'; readonly asked: TestAsked }
);

/** What a record is gathered from. */
export interface RecordAsked {
  /** What people wrote down. */
  readonly day: CommissioningDay;
  readonly work: readonly BeamWork[];
  readonly findings: readonly FindingOut[] | null;
  readonly log: CommissioningRecord['log'];
  /** When it is made [ms since 1970 UTC]. */
  readonly made: number;
}

/** A record in its two forms. */
export interface RecordTold {
  /** How many points want looking at, and how many are missing. */
  readonly attention: number;
  readonly missing: number;
  readonly json: string;
  readonly page: string;
}

const names: Readonly<Record<BeamWork['kind'], string>> = {
  aim: 'aim scan',
  covered: 'covered test',
  proof: 'proof',
};

/**
 * Gathers the commissioning record of a sheet. A test that cannot be used is told in it and counts as missing; of two
 * of one kind for one beam the lower one on the page is taken, and that is told too.
 */
export async function recordTold(asked: RecordAsked, site: Site): Promise<RecordTold> {
  const answers = new Map<string, BeamAnswers>();
  const troubles: PointOut[] = [];
  const seen = new Set<string>();
  for (const work of asked.work.toReversed()) {
    const { beam, number, kind } = work;
    const what = `${names[kind]} of cell ${number}`;
    if (seen.has(`${kind} ${beam}`)) {
      troubles.push({ beam, words: `${what}: left out, for a lower cell holds another of this beam.` });
      continue;
    }
    seen.add(`${kind} ${beam}`);
    try {
      answers.set(beam, { ...answers.get(beam), [kind]: await answerTo(work, site) });
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      troubles.push({ beam, words: `${what}: could not be used. ${error.message}` });
    }
  }
  const { day, findings, log, made } = asked;
  const record = recordOf(day, site, { answers, troubles: troubles.toReversed(), log, findings, made });
  return {
    attention: record.attention.length,
    missing: record.missing.length,
    json: `${JSON.stringify(record, null, 2)}\n`,
    page: recordPage(record),
  };
}

async function answerTo(work: BeamWork, site: Site): Promise<BeamAnswers[BeamWork['kind']]> {
  switch (work.kind) {
    case 'aim': {
      const { scan, left, structure, beam } = work;
      return aim(textTable(scan.text, scan.name), site, { beam, structure, ...(left.length > 0 ? { left } : {}) });
    }
    case 'covered':
      return covered(logOfText(work.test.text, work.test.name), site, { beam: work.beam });
    case 'proof':
      return (await proofTold(work.asked, site)).proof;
  }
}
