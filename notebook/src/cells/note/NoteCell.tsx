import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';

/** A note in Markdown: shown as text until it is edited, and on paper always. */
export function NoteCell({ cell }: { cell: Cell<'note'> }) {
  const { text } = cell.settings;
  const editing = useSignal(text === '');
  return (
    <div class="note">
      {editing.value && (
        <label data-screen>
          <span class="unseen">Note in Markdown</span>
          <textarea
            rows={Math.max(4, text.split('\n').length + 1)}
            placeholder="A note; **bold**, lists and headings as in Markdown"
            value={text}
            onInput={(event) => {
              const { value } = event.currentTarget;
              edit((sheet) => set(sheet, cell, { text: value }), `${cell.id} text`);
            }}
          />
        </label>
      )}
      {text !== '' && <Shown text={text} onPaper={editing.value} />}
      <div class="buttons" data-screen>
        <button
          type="button"
          onClick={() => {
            editing.value = !editing.value;
          }}
        >
          {editing.value ? 'Done' : 'Edit the note'}
        </button>
      </div>
    </div>
  );
}

/** Markdown made to HTML and cleaned of everything that could do something; both libraries come when first needed. */
function Shown({ text, onPaper }: { text: string; onPaper: boolean }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let outdated = false;
    void Promise.all([import('marked'), import('dompurify')]).then(async ([{ marked }, { default: purify }]) => {
      const html = await marked.parse(text, { gfm: true, breaks: true });
      const clean = purify.sanitize(html, {
        RETURN_DOM_FRAGMENT: true,
        FORBID_TAGS: ['style', 'form', 'input', 'img', 'video', 'audio', 'svg', 'math'],
        FORBID_ATTR: ['style', 'class', 'id'],
      });
      if (!outdated) box.current?.replaceChildren(clean);
    });
    return () => {
      outdated = true;
    };
  }, [text]);
  return <div class={onPaper ? 'prose on-paper' : 'prose'} ref={box} />;
}
