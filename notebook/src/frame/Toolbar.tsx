import { useRef } from 'preact/hooks';
import { fileName } from '../parts/fileName.js';
import { saveBlob } from '../parts/saveText.js';
import { printSheet } from '../plots/Plot.js';
import { chooseTheme, type ThemeChoice, themeChoice } from '../plots/scheme.js';
import { saveReport } from '../report/saveReport.js';
import { atWork, shown } from '../state/atWork.js';
import { saved } from '../state/autosave.js';
import { demoSheet } from '../state/demoSheet.js';
import { notice } from '../state/notices.js';
import { openSheet } from '../state/openSheet.js';
import { type LogsAlong, sheetFile } from '../state/sheetFiles.js';
import { redo, redoable, replace, sheet, undo, undoable } from '../state/store.js';
import { AtWork } from './AtWork.js';

/** What can be done with the whole sheet, and whether it is kept. */
export function Toolbar() {
  const input = useRef<HTMLInputElement>(null);
  const busy = atWork.value !== null;
  return (
    <nav class="toolbar" data-screen aria-label="Worksheet">
      <p class="mark">beamkeep</p>
      <div class="buttons">
        <button type="button" disabled={!undoable.value} onClick={undo} title="Ctrl+Z">
          Undo
        </button>
        <button type="button" disabled={!redoable.value} onClick={redo} title="Ctrl+Shift+Z">
          Redo
        </button>
        {ways.map(([along, name, title]) => (
          <button key={along} type="button" title={title} disabled={busy} onClick={() => void save(along)}>
            {name}
          </button>
        ))}
        <button type="button" disabled={busy} onClick={() => input.current?.click()}>
          Open
        </button>
        <input
          ref={input}
          class="unseen"
          type="file"
          tabIndex={-1}
          aria-label="A saved worksheet"
          accept=".json"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            event.currentTarget.value = '';
            if (file) void openSheet(file);
          }}
        />
        <button type="button" onClick={() => replace(demoSheet())}>
          Demo
        </button>
        <button type="button" onClick={() => void saveReport()}>
          Report
        </button>
        <button type="button" onClick={() => void printSheet()}>
          Print
        </button>
        <label class="theme">
          <span class="unseen">Theme</span>
          <select value={themeChoice.value} onChange={(event) => chooseTheme(event.currentTarget.value as ThemeChoice)}>
            <option value="system">theme of the device</option>
            <option value="light">light theme</option>
            <option value="dark">dark theme</option>
          </select>
        </label>
      </div>
      <p class="saved" role="status">
        {savedInWords()}
      </p>
      <AtWork />
    </nav>
  );
}

const clock = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' });

function savedInWords(): string {
  const state = saved.value;
  if (state.is === 'pending') return 'saving …';
  if (state.is === 'impossible') return 'not kept by this browser: save to a file';
  return `saved in this browser ${clock.format(state.at)}`;
}

/** What a saved sheet can hold of its logs. */
const ways: readonly (readonly [along: LogsAlong, name: string, title: string])[] = [
  ['none', 'Save', 'Cells, settings and notes; the log is not in the file'],
  [
    'reduced',
    'Save with reduced log',
    'The log in it as this sheet reckons with it: a quiet minute of a long log is one row',
  ],
  ['whole', 'Save with log', 'The log in it as it was dropped, every sample'],
];

async function save(along: LogsAlong): Promise<void> {
  const { value: now } = sheet;
  try {
    const file = await shown('Packing the log', (tell, signal) => sheetFile(now, along, tell, signal));
    if (file) saveBlob(fileName([now.title], 'beamkeep.json'), file);
  } catch (error) {
    notice.value = { what: `This sheet was not saved: ${(error as Error).message}.` };
  }
}
