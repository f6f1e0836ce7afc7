import type { FunctionComponent } from 'preact';
import { useErrorBoundary, useMemo } from 'preact/hooks';
import { cellViews } from '../cells/index.js';
import { duplicated, folded, moved, removed } from '../sheet/edits.js';
import type { Cell } from '../sheet/sheet.js';
import { edit } from '../state/store.js';
import { AddCell } from './AddCell.js';

interface CellFrameProps {
  readonly cell: Cell;
  readonly number: number;
  readonly last: boolean;
}

/** A cell in its place. An edit elsewhere on the sheet leaves it as it is. */
export function CellFrame({ cell, number, last }: CellFrameProps) {
  return useMemo(() => <Framed cell={cell} number={number} last={last} />, [cell, number, last]);
}

/** Number, question, what can be done to it, and its content. */
function Framed({ cell, number, last }: CellFrameProps) {
  const { question } = cellViews[cell.kind];
  return (
    <>
      <section id={`cell-${cell.id}`} class={`cell cell-${cell.kind}`} aria-label={`${number}: ${question}`}>
        <header class="cell-head">
          <span class="cell-number" aria-hidden="true">
            {number}
          </span>
          <h2>{question}</h2>
          <fieldset class="cell-tools" data-screen aria-label={`Cell ${number}: ${question}`}>
            <button
              type="button"
              aria-expanded={!cell.folded}
              onClick={() => edit((sheet) => folded(sheet, cell.id, !cell.folded))}
            >
              {cell.folded ? 'unfold' : 'fold'}
            </button>
            <button type="button" disabled={number === 1} onClick={() => edit((sheet) => moved(sheet, cell.id, -1))}>
              up
            </button>
            <button type="button" disabled={last} onClick={() => edit((sheet) => moved(sheet, cell.id, 1))}>
              down
            </button>
            <button type="button" onClick={() => edit((sheet) => duplicated(sheet, cell.id))}>
              copy
            </button>
            <button type="button" onClick={() => edit((sheet) => removed(sheet, cell.id))}>
              remove
            </button>
          </fieldset>
        </header>
        {!cell.folded && (
          <div class="cell-body">
            <Content cell={cell} />
          </div>
        )}
      </section>
      <AddCell after={cell.id} />
    </>
  );
}

/** The cell's content. If it fails, it fails alone. */
function Content({ cell }: { cell: Cell }) {
  const [error, again] = useErrorBoundary();
  if (error) {
    return (
      <div class="trouble" role="alert">
        <p>
          This cell failed; the fault is the notebook’s own. The rest of the sheet is untouched.{' '}
          <span class="told">{String(error instanceof Error ? error.message : error)}</span>
        </p>
        <button type="button" onClick={again}>
          Try again
        </button>
      </div>
    );
  }
  const View = cellViews[cell.kind].View as FunctionComponent<{ readonly cell: Cell }>;
  return <View cell={cell} />;
}
