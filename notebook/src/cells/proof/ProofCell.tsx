import type { Site } from 'beamkeep/site';
import type { PlanTold } from '../../bench/proofTold.js';
import { Asked } from '../../parts/Asked.js';
import { FileField } from '../../parts/FileField.js';
import { saveText } from '../../parts/saveText.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings, SmallText } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { BeamChoice } from '../BeamChoice.js';
import { chosenBeam } from '../chosenBeam.js';
import { NeedsSite } from '../NeedsSite.js';
import { useAnswer } from '../useAnswer.js';
import { useKept } from '../useKept.js';
import { beamOfSheet } from './beamOfSheet.js';
import { Judged } from './Judged.js';
import { Minded } from './Minded.js';
import { StepList } from './StepList.js';
import { secondsAhead, testAsked } from './testAsked.js';

/** Did the tests show what they had to? */
export function ProofCell({ cell }: { cell: Cell<'proof'> }) {
  return <NeedsSite cell={cell.id}>{(site) => <Proof cell={cell} site={site} />}</NeedsSite>;
}

function Proof({ cell, site }: { cell: Cell<'proof'>; site: Site }) {
  const { sheet, events, times } = cell.settings;
  const change = (to: Partial<Settings['proof']>, mark?: string): void => edit((now) => set(now, cell, to), mark);
  const beam = chosenBeam(site, cell.settings.beam);
  const written = times.join('|');
  const plan = useKept(useAnswer(() => helper().proofPlan({ beam, sheet, times }, site), [site, beam, sheet, written]));
  const test = testAsked(cell.settings, beam);
  const { clockOffset } = cell.settings;
  const clockUnknown = Number.isNaN(secondsAhead(clockOffset));
  const proof = useKept(
    useAnswer(test && (() => helper().proof(test, site)), [
      site,
      beam,
      sheet,
      written,
      test?.test,
      events,
      test?.clockOffsetSeconds,
    ]),
  );
  const found = site.beams.find(({ id }) => id === beam);
  return (
    <>
      <div class="settings">
        <BeamChoice site={site} beam={beam} onBeam={(id) => change({ beam: id })} />
        <FileField what="log of the test" file={cell.settings.test} onFile={(file) => change({ test: file })} />
        <FileField what="panel’s list" file={events} onFile={(file) => change({ events: file })} />
        {events && (
          <label class="field">
            <span>Panel’s clock ahead of the logger’s [s]</span>
            <input
              inputMode="decimal"
              size={6}
              value={clockOffset}
              aria-invalid={clockUnknown}
              onInput={(event) => change({ clockOffset: event.currentTarget.value }, `${cell.id} clock`)}
            />
          </label>
        )}
        <FileField
          what="proof sheet"
          file={sheet}
          accept=".json"
          onFile={(file) => change({ sheet: file, times: [], ...beamOf(file, site) })}
        />
      </div>
      <Asked
        of={[
          ['Log of the test', cell.settings.test?.name ?? ''],
          ['panel’s list', events?.name ?? ''],
          ['panel’s clock ahead of the logger’s [s]', events ? clockOffset : ''],
          ['proof sheet', sheet?.name ?? ''],
        ]}
      />
      {clockUnknown && (
        <p class="trouble">“{clockOffset}” is no number of seconds: the panel’s clock is taken as right.</p>
      )}
      {plan.is === 'refused' && <p class="trouble">{plan.why}</p>}
      {plan.is === 'told' && <Minded cautions={plan.told.cautions} stage="before" />}
      {proof.is === 'asking' && <p class="empty">Looking for the steps in the test …</p>}
      {proof.is === 'refused' && proof.why !== (plan.is === 'refused' && plan.why) && (
        <p class="trouble">{proof.why}</p>
      )}
      {proof.is === 'told' && found && <Judged told={proof.told} beam={found} site={site} />}
      {plan.is === 'told' && proof.is === 'nothing' && <Unproved told={plan.told} sheet={sheet} />}
      {plan.is === 'told' && (
        <StepList
          cell={cell}
          plan={plan.told}
          proof={proof.is === 'told' ? proof.told.proof : null}
          timeZone={site.timeZone}
        />
      )}
      {plan.is === 'told' && <Minded cautions={plan.told.cautions} stage="prove" />}
      {plan.is === 'told' && <Minded cautions={plan.told.cautions} stage="after" />}
    </>
  );
}

/** What is there before a test is. */
function Unproved({ told: { plan }, sheet }: { told: PlanTold; sheet: SmallText | null }) {
  return (
    <>
      <p class="answer">
        Proof sheet of beam {plan.beam}, {sheet ? `as ${sheet.name} has it` : 'the usual steps'}: what to do, and what
        each step must show by the settings of the site file. Print it, do the steps with the logger running, then drop
        the log of the test on “Choose log of the test”.
      </p>
      <div class="buttons" data-screen>
        <button
          type="button"
          onClick={() =>
            saveText(`proof-${plan.beam}.sheet.json`, 'application/json', `${JSON.stringify(plan.sheet, null, 2)}\n`)
          }
        >
          Save the sheet, to change it
        </button>
      </div>
      {plan.assumed.length > 0 && <p class="key">Assumed: {plan.assumed.join('; ')}.</p>}
    </>
  );
}

/** The beam that a sheet names, where the site has it. */
function beamOf(file: SmallText | null, { beams }: Site): Partial<Settings['proof']> {
  const named = file && beamOfSheet(file.text);
  return beams.some(({ id }) => id === named) ? { beam: named } : {};
}
