import type { FindingJson } from 'beamkeep';
import type { Severity } from 'beamkeep/diagnosis';

const duty: Readonly<Record<Severity, number>> = { act: 0, watch: 1, note: 2 };

/** Whether a severity is at or above another. */
export const reaches = (severity: Severity, level: Severity): boolean => duty[severity] <= duty[level];

/** Whether a finding is a possibility only: less likely than not, and not a matter of smoke. */
export const onlyPossible = ({ cause, confidence }: FindingJson): boolean => confidence < 0.5 && cause !== 'smoke-like';

const rank = (finding: FindingJson): number =>
  duty[finding.severity] * 4 + (finding.cause === 'smoke-like' ? 0 : 1) + (onlyPossible(finding) ? 2 : 0);

/** Most pressing first: by severity, smoke before the rest, statements before possibilities, then by time. */
export const ordered = (findings: readonly FindingJson[]): FindingJson[] =>
  [...findings].sort((a, b) => rank(a) - rank(b) || Date.parse(a.start) - Date.parse(b.start));

/** The most pressing severity among findings. */
export const worst = (findings: readonly FindingJson[]): Severity | undefined => ordered(findings)[0]?.severity;
