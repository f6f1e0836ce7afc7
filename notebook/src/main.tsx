import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/stix-two-text/wght.css';
import '@fontsource-variable/stix-two-text/wght-italic.css';
import './look/look.css';
import { effect, untracked } from '@preact/signals';
import { render } from 'preact';
import { App } from './App.js';
import { plotly } from './plots/plotly.js';
import { chooseTheme, themeChoice } from './plots/scheme.js';
import { keepSaving, kept } from './state/autosave.js';
import { demoSheet } from './state/demoSheet.js';
import { followSheet } from './state/desk.js';
import { notice } from './state/notices.js';
import { tidyShelf } from './state/shelf.js';
import { begin, sheet } from './state/store.js';

/** Opens the sheet of the last visit, or the demo. */
async function start(): Promise<void> {
  chooseTheme(themeChoice.value);
  const last = await kept();
  begin(last.sheet ?? demoSheet());
  if (last.damaged)
    notice.value = {
      what: `The sheet of your last visit cannot be read: ${last.damaged.why}. It was put aside, not thrown away.`,
      rescue: { name: 'worksheet-damaged.json', text: last.damaged.text },
    };
  const root = document.getElementById('sheet');
  if (!root) throw new Error('the page has no place for the sheet');
  render(<App />, root);
  effect(() => {
    const { cells } = sheet.value;
    untracked(() => followSheet(cells));
  });
  keepSaving();
  void tidyShelf(shelfKeys());
  // The plotting library is large: it comes when the page stands.
  requestAnimationFrame(() => setTimeout(() => void plotly()));
  keepOffline();
}

function shelfKeys(): ReadonlySet<string> {
  const keys = sheet.value.cells.flatMap((cell) =>
    cell.kind === 'log' && cell.settings.log.from === 'shelf' ? [cell.settings.log.key] : [],
  );
  return new Set(keys);
}

/** Keeps the page's own files for a visit without a network, where the browser can. */
function keepOffline(): void {
  if (import.meta.env.PROD && 'serviceWorker' in navigator) void navigator.serviceWorker.register('./serviceWorker.js');
}

void start();
