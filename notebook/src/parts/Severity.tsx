import type { Severity } from 'beamkeep/diagnosis';
import { duty } from '../words/severity.js';

/** Severity as a word in a box that is filled like the bars of the plots: solid, hatched or open. */
export function SeverityWord({ severity }: { severity: Severity }) {
  return (
    <span class={`severity severity-${severity}`} title={duty[severity]}>
      <span>{severity}</span>
    </span>
  );
}
