import type { FindingOut } from 'beamkeep/commissioning';
import type { Reading } from '../../bench/reading.js';
import type { VerdictOnFinding } from '../../sheet/sheet.js';
import { verdictKey } from '../findings/verdictKey.js';

/** Findings that a record holds: those that a person judged, and those that ask for someone to go. */
export function findingsOut(
  { beams }: Pick<Reading, 'beams'>,
  verdicts: Readonly<Record<string, VerdictOnFinding>>,
): FindingOut[] {
  return beams
    .flatMap(({ findings }) => findings)
    .map((finding): FindingOut => {
      const key = verdictKey(finding);
      const said = Object.hasOwn(verdicts, key) ? verdicts[key] : undefined;
      const { beam, cause, severity, confidence, summary } = finding;
      return {
        beam,
        cause,
        severity,
        confidence,
        start: new Date(finding.start).toISOString(),
        end: new Date(finding.end).toISOString(),
        summary,
        onSite: said ? { verdict: said.verdict, cause: said.cause ?? null, note: said.note } : null,
      };
    })
    .filter(({ severity, onSite }) => severity === 'act' || onSite !== null);
}
