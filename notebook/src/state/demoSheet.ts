import { freshCell, freshSheet, type Sheet } from '../sheet/sheet.js';

/** What the sheet of the demo is called, until another log lies in it. */
export const demoTitle = 'Why at 06:40 on Tuesdays?';

/** A sheet that shows the demo. */
export function demoSheet(): Sheet {
  const { cells } = freshSheet({ from: 'demo' });
  const asked = cells.map((cell) =>
    cell.kind === 'why' ? { ...cell, settings: { at: 'Tue 06:40', beam: null } } : cell,
  );
  const at = asked.findIndex(({ kind }) => kind === 'why');
  return { title: demoTitle, cells: asked.toSpliced(at + 1, 0, freshCell('events')) };
}
