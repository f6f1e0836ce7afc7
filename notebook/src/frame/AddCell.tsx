import { useId, useRef } from 'preact/hooks';
import { cellViews } from '../cells/index.js';
import { added } from '../sheet/edits.js';
import type { Kind } from '../sheet/sheet.js';
import { edit } from '../state/store.js';

/** A place between cells where another can be added. */
export function AddCell({ after }: { after: string | null }) {
  const menu = useRef<HTMLDivElement>(null);
  const id = useId();
  return (
    <div class="add" data-screen>
      <button type="button" class="add-button" popovertarget={id} aria-label="Add a cell here">
        + add
      </button>
      <div ref={menu} id={id} popover="auto" class="menu">
        {Object.entries(cellViews).map(([kind, { about }]) => (
          <button
            key={kind}
            type="button"
            onClick={() => {
              menu.current?.hidePopover();
              edit((sheet) => added(sheet, kind as Kind, after));
            }}
          >
            {about}
          </button>
        ))}
      </div>
    </div>
  );
}
