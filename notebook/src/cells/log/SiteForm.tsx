import { useSignal } from '@preact/signals';
import { type Layout, type SignalUnit, signalUnits } from 'beamkeep/site';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { type OpenBench, openBench } from '../../bench/openBench.js';
import type { Peeked } from '../../bench/peek.js';
import type { LogFile } from '../../bench/reading.js';
import { Scroll } from '../../parts/Scroll.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { type BeamDraft, guessed, type Role, roles, type SiteDraft, siteOf } from './siteDraft.js';

interface SiteFormProps {
  readonly cell: Cell<'log'>;
  readonly files: readonly LogFile[];
}

/** Asks for the site of a log that came without one: its columns, and what the beams are. */
export function SiteForm({ cell, files }: SiteFormProps) {
  const head = useSignal<Peeked | null>(null);
  const helper = useRef<OpenBench>(undefined);
  const first = files[0];
  useEffect(() => {
    if (!first) return;
    const open = openBench();
    helper.current = open;
    void open.bench.peek({ name: first.name, blob: first.blob }).then((peeked) => {
      head.value = peeked;
    });
    return open.close;
  }, [first, head]);
  if (!head.value) return <p class="empty">Looking at the first lines …</p>;
  return (
    <Form
      cell={cell}
      name={first?.name ?? ''}
      peeked={head.value}
      refusal={async (text) => (await helper.current?.bench.refusal(text, 'this site')) ?? null}
    />
  );
}

interface FormProps {
  readonly cell: Cell<'log'>;
  readonly name: string;
  readonly peeked: Peeked;
  /** Why a site file cannot be used, or null. */
  readonly refusal: (text: string) => Promise<string | null>;
}

function Form({ cell, name, peeked, refusal }: FormProps) {
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const draft = useSignal<SiteDraft>(guessed(peeked, here));
  const refused = useSignal<string | null>(null);
  const zones = useMemo(() => Intl.supportedValuesOf('timeZone'), []);
  const now = draft.value;
  const change = (to: Partial<SiteDraft>): void => {
    draft.value = { ...draft.value, ...to };
  };
  const changeBeam = (column: number, to: Partial<BeamDraft>): void =>
    change({ beams: now.beams.map((beam, i) => (i === column ? { ...beam, ...to } : beam)) });
  const beams = peeked.columns.map((_, i) => i).filter((i) => now.roles[i] === 'beam');

  async function use(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    const text = siteOf(now, peeked.columns);
    refused.value = await refusal(text);
    if (refused.value !== null) return;
    edit((sheet) => set(sheet, cell, { site: { name: 'site.json', text } }));
  }

  return (
    <form class="site-form" onSubmit={(event) => void use(event)}>
      <p>
        {name} came without a site file. Drop one above, or say here what the columns are: they were guessed from their
        names and first lines.
      </p>
      <Scroll label="First lines of the log">
        <table>
          <thead>
            <tr>
              {peeked.columns.map((column, i) => (
                <th scope="col" key={`${i} ${column}`}>
                  {column}
                  <select
                    aria-label={`What column ${column} is`}
                    value={now.roles[i] ?? 'nothing'}
                    onChange={(event) => {
                      const role = event.currentTarget.value as Role;
                      change({ roles: now.roles.map((old, k) => (k === i ? role : old)) });
                    }}
                  >
                    {roles.map((role) => (
                      <option key={role} value={role}>
                        {role}
                      </option>
                    ))}
                  </select>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {peeked.rows.map((row, i) => (
              <tr key={`${i} ${row[0] ?? ''}`}>
                {peeked.columns.map((column, k) => (
                  <td key={`${k} ${column}`}>{row[k]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <div class="settings">
        <label class="field">
          <span>Name of the site</span>
          <input value={now.name} onInput={(event) => change({ name: event.currentTarget.value })} />
        </label>
        <label class="field">
          <span>Time zone of the site</span>
          <select value={now.timeZone} onChange={(event) => change({ timeZone: event.currentTarget.value })}>
            {[...new Set(['UTC', here, ...zones])].map((zone) => (
              <option key={zone} value={zone}>
                {zone}
              </option>
            ))}
          </select>
        </label>
      </div>
      {beams.map((i) => {
        const beam = now.beams[i];
        if (!beam) return null;
        return (
          <fieldset class="beam-draft" key={beam.column}>
            <legend>Beam {beam.column}</legend>
            <div class="settings">
              <label class="field">
                <span>Layout</span>
                <select
                  value={beam.layout}
                  onChange={(event) => changeBeam(i, { layout: event.currentTarget.value as Layout })}
                >
                  <option value="reflective">reflective: light crosses the smoke twice</option>
                  <option value="end-to-end">end to end: once</option>
                </select>
              </label>
              <label class="field">
                <span>Separation of the ends [m]</span>
                <input
                  required
                  inputMode="decimal"
                  pattern="\s*[0-9]+([.,][0-9]+)?\s*"
                  title="A length in metres, such as 62"
                  value={beam.separation}
                  onInput={(event) => changeBeam(i, { separation: event.currentTarget.value })}
                />
              </label>
              <label class="field">
                <span>Unit of the column</span>
                <select
                  value={beam.unit}
                  onChange={(event) => changeBeam(i, { unit: event.currentTarget.value as SignalUnit })}
                >
                  {signalUnits.map((unit) => (
                    <option key={unit} value={unit}>
                      {unit}
                    </option>
                  ))}
                </select>
              </label>
              <label class="field">
                <span>Alarm at [%]</span>
                <input
                  required
                  inputMode="decimal"
                  value={beam.alarm}
                  onInput={(event) => changeBeam(i, { alarm: event.currentTarget.value })}
                />
              </label>
              <label class="field">
                <span>Blocked at [%]</span>
                <input
                  required
                  inputMode="decimal"
                  value={beam.fault}
                  onInput={(event) => changeBeam(i, { fault: event.currentTarget.value })}
                />
              </label>
            </div>
          </fieldset>
        );
      })}
      {beams.length === 0 && <p class="trouble">No column is a beam yet: say above which is.</p>}
      {refused.value && (
        <p class="trouble" role="alert">
          {refused.value}
        </p>
      )}
      <div class="buttons">
        <button type="submit" disabled={beams.length === 0}>
          Use this site and read the log
        </button>
      </div>
    </form>
  );
}
