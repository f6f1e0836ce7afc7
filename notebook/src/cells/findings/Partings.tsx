import type { RunnerUpJson } from 'beamkeep';
import { doubleHeading } from '../../words/causes.js';

/** What comes second, why the signal may not part the two, and what does on site. */
export function Partings({ runnerUp: { cause, finding, alike, test, outcomes } }: { runnerUp: RunnerUpJson }) {
  return (
    <details class="partings">
      <summary>
        {finding ? 'Second comes' : 'Easily taken for it'}: {doubleHeading(cause)}
      </summary>
      <p>{alike}</p>
      <p>{test}</p>
      <dl>
        {outcomes.map(({ cause: one, looks }) => (
          <div key={one}>
            <dt>{doubleHeading(one)}</dt>
            <dd>{looks}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
