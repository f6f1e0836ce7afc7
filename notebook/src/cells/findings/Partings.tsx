import type { RunnerUpJson } from 'beamkeep';
import { causeWords } from 'beamkeep/diagnosis';
import { causeHeading } from '../../words/causes.js';

/** What comes second, why the signal may not part the two, and what does on site. */
export function Partings({ runnerUp: { cause, finding, alike, test, outcomes } }: { runnerUp: RunnerUpJson }) {
  return (
    <details class="partings">
      <summary>
        {finding ? 'Second comes' : 'Easily taken for it'}: {heading(cause)}
      </summary>
      <p>{alike}</p>
      <p>{test}</p>
      <dl>
        {outcomes.map(({ cause: one, looks }) => (
          <div key={one}>
            <dt>{heading(one)}</dt>
            <dd>{looks}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** A cause by its heading; other words as they are. */
function heading(word: string): string {
  const cause = causeWords.find((one) => one === word);
  return cause ? causeHeading(cause) : word;
}
