import { type RowField, Rows } from '../../parts/Rows.js';
import { WrittenField, type WrittenKind } from '../../parts/WrittenField.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';

type Written = Settings['record'];

const person: readonly RowField<'role' | 'name' | 'licence'>[] = [
  { key: 'role', label: 'part in the work' },
  { key: 'name', label: 'name' },
  { key: 'licence', label: 'licence' },
];
const telling: readonly RowField<'who' | 'time'>[] = [
  { key: 'who', label: 'who' },
  { key: 'time', label: 'when', kind: 'moment' },
];

/** What people write down because no signal shows it. What is left empty is shown as missing. */
export function RecordForm({ cell, timeZone }: { cell: Cell<'record'>; timeZone: string }) {
  const { settings } = cell;
  const { watch } = settings;
  const change = (to: Partial<Written>, typed?: string): void =>
    edit((sheet) => set(sheet, cell, to), typed === undefined ? undefined : `${cell.id} ${typed}`);
  const plain = (
    key: 'date' | 'from' | 'until' | 'returned' | 'returnedBy',
    label: string,
    kind: WrittenKind = 'text',
  ) => (
    <WrittenField
      label={label}
      kind={kind}
      value={settings[key]}
      onWritten={(value) => change({ [key]: value }, key)}
    />
  );
  const watched = (key: keyof Written['watch'], label: string, kind: WrittenKind = 'text') => (
    <WrittenField
      label={label}
      kind={kind}
      value={watch[key]}
      onWritten={(value) => change({ watch: { ...watch, [key]: value } }, `watch ${key}`)}
    />
  );
  const lines = (key: 'deviations' | 'notDone' | 'remarks', label: string) => (
    <label class="field">
      <span>{label}, a line each</span>
      <textarea rows={2} value={settings[key]} onInput={(event) => change({ [key]: event.currentTarget.value }, key)} />
    </label>
  );
  return (
    <details class="record-form" data-screen open>
      <summary>Written down by people</summary>
      <p class="key">
        No signal shows these. Times on the clock of {timeZone}. What is left empty stands in the record as missing.
        Names are personal data: keep the record where it belongs.
      </p>
      <div class="settings">{plain('date', 'Day of the work', 'day')}</div>
      <Rows
        legend="People"
        one="person"
        fields={person}
        rows={settings.people}
        onChange={(people, typed) => change({ people: [...people] }, typed)}
      />
      <fieldset class="rows">
        <legend>Impairment</legend>
        <div class="row">
          {plain('from', 'out of service from', 'moment')}
          {plain('until', 'until', 'moment')}
        </div>
      </fieldset>
      <Rows
        legend="Told that the system is out of service"
        one="person or place told"
        fields={telling}
        rows={settings.told}
        onChange={(told, typed) => change({ told: [...told] }, typed)}
      />
      <fieldset class="rows">
        <legend>Fire watch</legend>
        <div class="row">
          {watched('by', 'kept by')}
          {watched('from', 'from', 'moment')}
          {watched('until', 'until', 'moment')}
        </div>
      </fieldset>
      <fieldset class="rows">
        <legend>Return to service</legend>
        <div class="row">
          {plain('returned', 'when', 'moment')}
          {plain('returnedBy', 'by whom')}
        </div>
      </fieldset>
      <Rows
        legend="Told that the system is back"
        one="person or place told"
        fields={telling}
        rows={settings.toldBack}
        onChange={(toldBack, typed) => change({ toldBack: [...toldBack] }, typed)}
      />
      {lines('deviations', 'Deviations')}
      {lines('notDone', 'What was not done')}
      {lines('remarks', 'Remarks')}
    </details>
  );
}
