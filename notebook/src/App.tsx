import { useEffect } from 'preact/hooks';
import { AddCell } from './frame/AddCell.js';
import { CellFrame } from './frame/CellFrame.js';
import { Guide } from './frame/Guide.js';
import { Head } from './frame/Head.js';
import { Notices } from './frame/Notices.js';
import { Toolbar } from './frame/Toolbar.js';
import { filling } from './parts/InTurn.js';
import { redo, sheet, undo } from './state/store.js';

/** The worksheet, from top to bottom. */
export function App() {
  useEffect(() => {
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, []);
  const { cells } = sheet.value;
  return (
    <>
      <a class="skip" href="#cells">
        Skip to the worksheet
      </a>
      <Toolbar />
      <Head />
      <Notices />
      <Guide />
      <main id="cells" aria-busy={filling.value}>
        <AddCell after={null} />
        {cells.map((cell, row) => (
          <CellFrame key={cell.id} cell={cell} number={row + 1} last={row === cells.length - 1} />
        ))}
      </main>
      <footer>
        <p>
          beamkeep explains; it does not decide. A smoke alarm is answered as a smoke alarm. Nothing on this page is
          sent anywhere.{' '}
          <a href="./numbers.html" target="_blank" rel="noopener" data-screen>
            Where the numbers come from
          </a>
        </p>
      </footer>
    </>
  );
}

/** Undo and redo by keys; a text field keeps its own. */
function onKeyDown(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  if (event.target instanceof HTMLTextAreaElement) return;
  if (event.target instanceof HTMLInputElement && event.target.type !== 'radio' && event.target.type !== 'checkbox')
    return;
  const key = event.key.toLowerCase();
  if (key !== 'z' && key !== 'y') return;
  event.preventDefault();
  if (key === 'y' || event.shiftKey) redo();
  else undo();
}
