import { bearsOnResponse } from '../../site/index.js';
import { figure } from '../words/figure.js';
import type { BeamOut, CommissioningRecord, PointOut } from './commissioningRecord.js';
import { impairmentAttention, impairmentMissing } from './impairmentPoints.js';

/*
 * What a reader must see first: what failed or wants looking at, and what a complete record would hold and this one does
 * not. Drawn from the record alone, so that a record read back gives the same.
 */

/** The points of a record. */
export interface Points {
  readonly attention: PointOut[];
  readonly missing: PointOut[];
}

/**
 * What failed and what is missing.
 *
 * @param record without its points
 * @param troubles tests that could not be used, and why
 */
export function pointsOf(
  record: Omit<CommissioningRecord, 'attention' | 'missing'>,
  troubles: readonly PointOut[],
): Points {
  return {
    attention: [...record.beams.flatMap(attentionOf), ...impairmentAttention(record), ...troubles],
    missing: [...record.beams.flatMap(missingOf), ...siteMissing(record)],
  };
}

function attentionOf({ id, thresholds, aim, covered, proof, settings }: BeamOut): PointOut[] {
  const words: string[] = [];
  if (aim?.verdict === 'look again') words.push(`aim: ${aim.sentences[0] ?? 'look again'}`);
  if (covered && covered.verdict !== 'fit') words.push(`covered test: ${covered.sentences[0] ?? covered.verdict}`);
  if (covered?.drift?.tells)
    words.push(`covered test: the clean reading changed by ${figure(covered.drift.percent)} %.`);
  if (
    covered &&
    covered.ratioOfSiteFile !== null &&
    (covered.ratioOfSiteFile < covered.ratio.low || covered.ratioOfSiteFile > covered.ratio.high)
  )
    words.push(
      `covered test: measured ${figure(covered.ratio.value)} of the clean reading, and the site file says ` +
        `${figure(covered.ratioOfSiteFile)}: write the measured reading into it.`,
    );
  for (const [at, step] of (proof?.steps ?? []).entries())
    if (step.verdict === 'fail') words.push(`proof, step ${at + 1} (${step.expected.do}): ${step.reasons.join(' ')}`);
  for (const stay of proof?.unexplained ?? [])
    words.push(`proof: a loss of ${figure(stay.largest)} % belongs to no step.`);
  for (const line of thresholds.limits)
    if (line.kept === 'no')
      words.push(
        `settings: ${line.asks} ${figure(line.limit ?? Number.NaN)} ${line.unit} is not kept (${line.source}, ${line.seen}).`,
      );
  const assumed = settings.assumed.filter(bearsOnResponse);
  if (assumed.length > 0) words.push(`settings assumed, not given: ${assumed.join('; ')}.`);
  return words.map((each) => ({ beam: id, words: each }));
}

function missingOf({ id, aim, covered, proof, settings }: BeamOut): PointOut[] {
  const steps = proof?.steps ?? [];
  const open = steps.flatMap((step, at) =>
    step.verdict === 'not shown' ? [`step ${at + 1} (${step.expected.do})`] : [],
  );
  const words = [
    aim === null && 'aim scan: not there',
    aim !== null && aim.left === null && 'aim: where the head was left is not told',
    covered === null && 'covered test: not there',
    proof === null && 'proof: not there',
    open.length > 0 && `proof: not shown by the log: ${open.join(', ')}`,
    proof !== null && !proof.panelList && "proof: the panel's own list was not given, so only the signal is judged",
    settings.halfAngle === null && aim === null && 'half-angle of the lobe: not known',
  ];
  return words.filter((each) => each !== false).map((each) => ({ beam: id, words: each }));
}

function siteMissing({
  date,
  people,
  impairment,
  log,
  findings,
}: Omit<CommissioningRecord, 'attention' | 'missing'>): PointOut[] {
  const unseen = (findings ?? []).filter(({ severity, onSite }) => severity === 'act' && onSite === null).length;
  const words = [
    date === '' && 'the day of the work',
    people.length === 0 && 'who did the work',
    people.length > 0 && people.every(({ licence }) => licence === null) && 'a licence of those who did the work',
    ...impairmentMissing(impairment),
    log === null && 'a log of the received signal after the work',
    unseen > 0 && `a look on site at findings that ask for someone to go: ${unseen}`,
  ];
  return words.filter((each) => each !== false).map((each) => ({ beam: null, words: each }));
}
