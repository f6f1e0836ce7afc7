import type { ProofJson } from 'beamkeep/commissioning';
import { useMemo } from 'preact/hooks';
import type { PlanTold } from '../../bench/proofTold.js';
import { type SiteZone, siteZone } from '../../bench/siteZone.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { figure } from '../../words/numbers.js';
import { typeset } from '../../words/typeset.js';
import { stepName } from './stepName.js';

type Step = ProofJson['steps'][number];
type Expected = PlanTold['plan']['steps'][number];

interface StepListProps {
  readonly cell: Cell<'proof'>;
  readonly plan: PlanTold;
  /** What the log showed; null before the test. */
  readonly proof: ProofJson | null;
  readonly timeZone: string;
}

/** The steps in order: what to do, what it must show, what it showed. */
export function StepList({ cell, plan: { plan, mustShow }, proof, timeZone }: StepListProps) {
  const zone = useMemo(() => siteZone(timeZone), [timeZone]);
  const { times } = cell.settings;
  const written = (row: number, time: string): void =>
    edit(
      (sheet) => set(sheet, cell, { times: plan.steps.map((_, at) => (at === row ? time : (times[at] ?? ''))) }),
      `${cell.id} time ${row}`,
    );
  return (
    <ol class="steps" aria-label={`Steps of the proof of beam ${plan.beam}`}>
      {plan.steps.map((expected, row) => {
        const step = proof?.steps[row];
        return (
          <li key={row} class={step?.verdict === 'fail' ? 'step step-failed' : 'step'}>
            <p class="step-head">
              <span class="finding-number">{row + 1}</span> <b>{stepName(expected.do)}</b>
              {step && <VerdictWord verdict={step.verdict} />}
            </p>
            <p>{expected.words}</p>
            <p class="key">{mustShow[row]}</p>
            {[...expected.doubts, ...expected.cautions].map((words) => (
              <p key={words} class="but">
                But {words}.
              </p>
            ))}
            {step ? (
              <Found step={step} zone={zone} />
            ) : (
              <p class="to-write">Done at ________ panel showed ________________ ☐ pass ☐ fail</p>
            )}
            {unseen.has(expected.do) && (
              <label class="field done-at" data-screen>
                <span>Done at, as written down (the signal does not show it; clock of {timeZone})</span>
                <input
                  type="datetime-local"
                  step={1}
                  value={times[row] ?? ''}
                  onInput={(event) => written(row, event.currentTarget.value)}
                />
              </label>
            )}
          </li>
        );
      })}
    </ol>
  );
}

/** Steps that the received signal does not show. */
const unseen: ReadonlySet<Expected['do']> = new Set(['reset', 'panel-alarm']);

/** A verdict as a word in a box; the filling follows the word. */
function VerdictWord({ verdict }: { verdict: Step['verdict'] }) {
  return (
    <span class={`severity step-${verdict.replace(' ', '-')}`}>
      <span>{verdict === 'fail' ? 'FAIL' : verdict}</span>
    </span>
  );
}

/** What the log showed of a step. */
function Found({ step, zone }: { step: Step; zone: SiteZone }) {
  const { expected, obscuration, riseSeconds, start, end, thresholdAt, signalAt, state, reasons, shownBy } = step;
  const clock = (iso: string | null): string => (iso === null ? '' : zone.wall(Date.parse(iso)).slice(11, 19));
  const takes = expected.do !== 'uncover' && typeof obscuration === 'number';
  const facts = [
    ['at', [...new Set([clock(start), clock(end)])].filter(Boolean).join(' to ')],
    ['took', takes ? `${figure(obscuration)} %` : ''],
    ['covered within', takes && typeof riseSeconds === 'number' ? `${figure(riseSeconds)} s` : ''],
    ['threshold at', clock(thresholdAt)],
    ['signal at', clock(signalAt)],
    ['state', state ?? ''],
    ['shown by', shownBy === 'nobody' ? '' : `the ${shownBy}`],
  ] as const;
  return (
    <>
      <dl class="step-facts">
        {facts
          .filter(([, value]) => value !== '')
          .map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
      <p class="step-why">{typeset(reasons.join(' '))}</p>
    </>
  );
}
