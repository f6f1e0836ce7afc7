import { logOfText, parseSite, UsageError } from 'beamkeep';
import {
  type AimJson,
  aim,
  type Caution,
  type CoveredJson,
  covered,
  type Stage,
  type Structure,
  stageCautions,
  type ThresholdsJson,
  textTable,
  thresholds,
} from 'beamkeep/commissioning';
import { type PlanAnswer, type PlanRequest, plan } from 'beamkeep/planning';
import type { Site } from 'beamkeep/site';
import type { LessonWord } from '../sheet/sheet.js';
import { type LessonValues, lessonOf, type TaughtLesson } from './lessonOf.js';
import { type Peeked, peeked } from './peek.js';
import { type RuleSetTold, ruleSetsTold } from './planOf.js';
import { type PlanTold, type ProofAsked, type ProofTold, planTold, proofTold, type TestAsked } from './proofTold.js';
import type { LogFile, SmallFile } from './reading.js';
import { type RecordAsked, type RecordTold, recordTold } from './recordTold.js';
import { plainFile } from './workbook.js';

/*
 * What the bench answers without a log: what files hold, and what the commissioning day, the lessons and the layouts ask.
 */

/** Answers that need no log. */
export const questions = {
  /** The first lines of a log. */
  async peek(file: LogFile): Promise<Peeked> {
    return peeked((await plainFile(file)).blob);
  },

  /** Why a site file cannot be used, in words; null when it can. */
  refusal(siteText: string, siteName: string): string | null {
    try {
      parseSite(siteText, siteName);
      return null;
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      return error.message;
    }
  },

  /**
   * What an aim scan says of a beam.
   *
   * @param scan CSV of one or two angles and a level
   * @param site the site
   * @param beam the beam
   * @param left where the head was left, one number an axis [degrees]; none where that is not known
   * @param structure what holds the head, as far as it is known
   */
  aim(scan: SmallFile, site: Site, beam: string, left: readonly number[], structure: Structure): AimJson {
    return aim(textTable(scan.text, scan.name), site, { beam, structure, ...(left.length > 0 ? { left } : {}) });
  },

  /** What a covered test says of a beam. */
  covered(test: SmallFile, site: Site, beam: string): Promise<CoveredJson> {
    return covered(logOfText(test.text, test.name), site, { beam });
  },

  /**
   * A site from its file.
   *
   * @throws UsageError when the file cannot be used
   */
  site(text: string, name: string): Site {
    return parseSite(text, name);
  },

  /** What each step of a proof must show on a site. */
  proofPlan(asked: ProofAsked, site: Site): PlanTold {
    return planTold(asked, site);
  },

  /** How a logged test of a proof came out. */
  proof(asked: TestAsked, site: Site): Promise<ProofTold> {
    return proofTold(asked, site);
  },

  /** The commissioning record of a sheet. */
  record(asked: RecordAsked, site: Site): Promise<RecordTold> {
    return recordTold(asked, site);
  },

  /** What the thresholds of a site mean. */
  thresholds(site: Site): ThresholdsJson {
    return thresholds(site);
  },

  /** What to mind at a stage of the commissioning day. */
  cautions(stage: Stage): Caution[] {
    return stageCautions(stage);
  },

  /** A lesson at some settings. */
  lesson(word: LessonWord, values: LessonValues): TaughtLesson {
    return lessonOf(word, values);
  },

  /** The rule sets by which a hall can be planned. */
  ruleSets(): RuleSetTold[] {
    return ruleSetsTold();
  },

  /** A layout of beams. */
  plan(request: PlanRequest): PlanAnswer {
    return plan(request);
  },
};
