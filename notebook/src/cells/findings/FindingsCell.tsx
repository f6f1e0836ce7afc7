import { beforeTests, severities } from 'beamkeep/diagnosis';
import { Fragment } from 'preact';
import type { BeamReading, NumberedFinding } from '../../bench/reading.js';
import { Asked } from '../../parts/Asked.js';
import { Choice } from '../../parts/Choice.js';
import { InTurn } from '../../parts/InTurn.js';
import { SeverityWord } from '../../parts/Severity.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { causeOnBar } from '../../words/causes.js';
import { duty } from '../../words/severity.js';
import { NeedsLog } from '../NeedsLog.js';
import type { OpenLog } from '../useLog.js';
import { FindingSheet } from './FindingSheet.js';
import { SaveFindings } from './SaveFindings.js';

/** What the log says about each beam, and why. */
export function FindingsCell({ cell }: { cell: Cell<'findings'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Findings cell={cell} log={log} />}</NeedsLog>;
}

/** Severities that are listed, from the least of them. */
const lists = [
  ['note', 'everything'],
  ['watch', 'watch and act'],
  ['act', 'act only'],
] as const;

function Findings({ cell, log }: { cell: Cell<'findings'>; log: OpenLog }) {
  const { beams } = log.reading;
  const { least } = cell.settings;
  const wanted = ({ severity }: NumberedFinding): boolean => severities.indexOf(severity) >= severities.indexOf(least);
  const all = beams.flatMap(({ findings }) => findings);
  return (
    <>
      <div class="settings">
        <Choice
          legend="List"
          options={lists}
          value={least}
          onChange={(value) => edit((sheet) => set(sheet, cell, { least: value }))}
        />
        <SaveFindings log={log} cell={cell} />
      </div>
      {least !== 'note' && <Asked of={[['Listed', lists.find(([one]) => one === least)?.[1] ?? '']]} />}
      <Summary beams={beams} />
      <dl class="duties">
        {[...severities].reverse().map((severity) => (
          <div key={severity}>
            <dt>
              <SeverityWord severity={severity} /> {all.filter((finding) => finding.severity === severity).length}
            </dt>
            <dd>{duty[severity]}</dd>
          </div>
        ))}
      </dl>
      {all.length > 0 && <p class="key">{beforeTests}</p>}
      {beams.map((beam) => {
        const listed = bySeverity(beam.findings.filter(wanted));
        return (
          <div class="beam" key={beam.id}>
            <h3>
              Beam {beam.id}
              {listed.length === 0 && (
                <span class="healthy">
                  {beam.findings.length === 0
                    ? 'nothing found: as far as this log shows, this beam is as it should be'
                    : 'nothing of this severity'}
                </span>
              )}
            </h3>
            {portions(listed).map((portion) => (
              <InTurn key={portion[0]?.number} of={log.reading}>
                {() =>
                  portion.map((finding) => (
                    <FindingSheet key={finding.number} cell={cell} log={log} finding={finding} />
                  ))
                }
              </InTurn>
            ))}
          </div>
        );
      })}
    </>
  );
}

/** Findings that are put on the page in one go. */
const atOnce = 6;

const portions = (findings: readonly NumberedFinding[]): NumberedFinding[][] =>
  Array.from({ length: Math.ceil(findings.length / atOnce) }, (_, row) =>
    findings.slice(row * atOnce, (row + 1) * atOnce),
  );

/** Most pressing first, then in order of time. */
const bySeverity = (findings: readonly NumberedFinding[]): NumberedFinding[] =>
  [...findings].sort((a, b) => severities.indexOf(b.severity) - severities.indexOf(a.severity) || a.start - b.start);

/** What cannot be told from smoke is treated as fire, however little light it took. */
const isPressing = ({ severity, cause }: NumberedFinding): boolean => severity === 'act' || cause === 'smoke-like';

/** The whole log in one or two sentences. */
function Summary({ beams }: { beams: readonly BeamReading[] }) {
  const pressing = beams.flatMap(({ findings }) => findings.filter(isPressing));
  const quiet = beams.filter(({ findings }) => findings.every(({ severity }) => severity === 'note'));
  return (
    <p class="answer">
      {pressing.length === 0 ? (
        'Nothing here asks for someone to go at once.'
      ) : (
        <>
          Someone must go and look, or treat it as fire:{' '}
          {pressing.map(({ number, beam, cause }, row) => (
            <Fragment key={number}>
              {row > 0 && ', '}
              <a href={`#finding-${number}`}>
                {number} {causeOnBar(cause)} on {beam}
              </a>
            </Fragment>
          ))}
          .
        </>
      )}
      {quiet.length > 0 && ` Nothing to plan on ${quiet.map(({ id }) => id).join(', ')}.`}
    </p>
  );
}
