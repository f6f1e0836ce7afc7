import { useSignal } from '@preact/signals';
import { saveText } from '../../parts/saveText.js';
import { set } from '../../sheet/edits.js';
import type { Cell, SmallText } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';

/** The site file as text, to be looked at, changed and saved. */
export function SiteText({ cell, site, open = false }: { cell: Cell<'log'>; site: SmallText; open?: boolean }) {
  const typed = useSignal<string | null>(null);
  const text = typed.value ?? site.text;
  return (
    <details open={open} data-screen>
      <summary>Site file: {site.name}</summary>
      <label class="site-text">
        <span class="unseen">Site file as JSON</span>
        <textarea
          rows={14}
          spellcheck={false}
          value={text}
          onInput={(event) => {
            typed.value = event.currentTarget.value;
          }}
        />
      </label>
      <div class="buttons">
        <button
          type="button"
          disabled={text === site.text}
          onClick={() => {
            typed.value = null;
            edit((sheet) => set(sheet, cell, { site: { name: site.name, text } }));
          }}
        >
          Use it and read again
        </button>
        <button type="button" disabled={typed.value === null} onClick={() => (typed.value = null)}>
          Take back
        </button>
        <button
          type="button"
          onClick={() => saveText(site.name.split('/').at(-1) ?? 'site.json', 'application/json', text)}
        >
          Save as a file
        </button>
      </div>
    </details>
  );
}
