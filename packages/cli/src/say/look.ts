import { type Io, knowsUnicode, lineWidth, wantsColour } from '../io.js';
import { ascii, braille, type Cells } from '../plot/cells.js';
import { type Palette, palette } from './palette.js';

/** How text for people may be shown. */
export interface Look {
  /** Characters in a line. */
  readonly width: number;
  readonly colours: Palette;
  readonly cells: Cells;
}

/** What this output and this environment allow. */
export const look = ({ stdout, env }: Io): Look => ({
  width: lineWidth(stdout),
  colours: palette(wantsColour(stdout, env)),
  cells: knowsUnicode(env) ? braille : ascii,
});
