import { causeWords } from 'beamkeep/diagnosis';
import type { NumberedFinding } from '../../bench/reading.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Verdict, VerdictOnFinding } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { causeHeading } from '../../words/causes.js';
import { verdictKey } from './verdictKey.js';

const words: Readonly<Record<Verdict, string>> = {
  confirmed: 'confirmed on site',
  rejected: 'rejected: it was not so',
  relabelled: 'it was something else',
};

/** What a person found on site stands beside what the log says. */
export function VerdictForm({ cell, finding }: { cell: Cell<'findings'>; finding: NumberedFinding }) {
  const key = verdictKey(finding);
  const { verdicts } = cell.settings;
  const said = Object.hasOwn(verdicts, key) ? verdicts[key] : undefined;

  function say(to: VerdictOnFinding | undefined, mark?: string): void {
    const { [key]: _old, ...others } = verdicts;
    edit((sheet) => set(sheet, cell, { verdicts: to ? { ...others, [key]: to } : others }), mark);
  }

  return (
    <>
      {said && <p class="verdict-told">On site: {inWords(said)}</p>}
      <div class="verdict" data-screen>
        <label>
          <span>On site</span>
          <select
            value={said?.verdict ?? ''}
            onChange={(event) => {
              const verdict = event.currentTarget.value as Verdict | '';
              say(verdict === '' ? undefined : { verdict, note: said?.note ?? '' });
            }}
          >
            <option value="">not looked at yet</option>
            {Object.entries(words).map(([verdict, word]) => (
              <option key={verdict} value={verdict}>
                {word}
              </option>
            ))}
          </select>
        </label>
        {said?.verdict === 'relabelled' && (
          <label>
            <span>namely</span>
            <select
              value={said.cause ?? ''}
              onChange={(event) => {
                const cause = causeWords.find((word) => word === event.currentTarget.value);
                say({ verdict: 'relabelled', note: said.note, ...(cause ? { cause } : {}) });
              }}
            >
              <option value="">choose</option>
              {causeWords.map((cause) => (
                <option key={cause} value={cause}>
                  {causeHeading(cause)}
                </option>
              ))}
            </select>
          </label>
        )}
        {said && (
          <label class="verdict-note">
            <span>note</span>
            <input
              type="text"
              value={said.note}
              onInput={(event) => say({ ...said, note: event.currentTarget.value }, `${cell.id} ${key}`)}
            />
          </label>
        )}
      </div>
    </>
  );
}

/** What was found on site, in one sentence. */
function inWords({ verdict, cause, note }: VerdictOnFinding): string {
  const namely = verdict === 'relabelled' && cause ? `, namely ${causeHeading(cause).toLowerCase()}` : '';
  return `${words[verdict]}${namely}${note ? `. ${note}` : '.'}`;
}
