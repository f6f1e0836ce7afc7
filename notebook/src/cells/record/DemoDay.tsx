import { useSignal } from '@preact/signals';
import { addedBefore, set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { dayFile, demoDay } from '../../state/demoDay.js';
import { edit } from '../../state/store.js';
import { dayCells } from './dayCells.js';

/** Offers the invented commissioning day of the demo: its tests as cells above, its people in the record. */
export function DemoDay({ cell }: { cell: Cell<'record'> }) {
  const trouble = useSignal<string | null>(null);
  async function take(): Promise<void> {
    try {
      const { tests, written } = await dayCells(await demoDay(), dayFile);
      edit((sheet) => set(addedBefore(sheet, tests, cell.id), cell, written));
    } catch (error) {
      trouble.value = (error as Error).message;
    }
  }
  return (
    <div data-screen>
      <p class="key">
        No test stands above yet: add cells for an aim scan, a covered test and a proof, or see how a whole day looks.
      </p>
      <div class="buttons">
        <button type="button" onClick={() => void take()}>
          Show the depot’s invented commissioning day
        </button>
      </div>
      {trouble.value && <p class="trouble">{trouble.value}</p>}
    </div>
  );
}
