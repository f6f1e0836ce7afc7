import type { FunctionComponent } from 'preact';
import type { Cell, Kind } from '../sheet/sheet.js';

/** How a kind of cell shows itself. */
export interface CellView<K extends Kind> {
  /** The question that the cell answers, its heading. */
  readonly question: string;
  /** One line for the menu of cells that can be added. */
  readonly about: string;
  readonly View: FunctionComponent<{ readonly cell: Cell<K> }>;
}
