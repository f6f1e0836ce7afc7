import { dot, type Raster } from './raster.js';

/** How dots become characters of a terminal. */
export interface Cells {
  /** Dots in a character, across and down. */
  readonly across: number;
  readonly down: number;
  /** The character at a place of the plot, counted in characters; a blank where it has no dots. */
  character(raster: Raster, row: number, column: number): string;
  readonly axis: string;
  readonly corner: string;
  readonly tick: string;
  readonly threshold: string;
  readonly bar: string;
  readonly faintBar: string;
  readonly instant: string;
}

/* Bits of a Braille character's eight dots, left column then right, from the top (Unicode Standard, Braille Patterns). */
const bits = [
  [0x01, 0x02, 0x04, 0x40],
  [0x08, 0x10, 0x20, 0x80],
] as const;

/** Eight dots a character. */
export const braille: Cells = {
  across: 2,
  down: 4,
  character: ({ columns, dots }, row, column) => {
    let pattern = 0;
    bits.forEach((side, x) => {
      side.forEach((bit, y) => {
        const at = column * 2 + x;
        if (at < columns && dots[(row * 4 + y) * columns + at] !== dot.empty) pattern |= bit;
      });
    });
    return pattern === 0 ? ' ' : String.fromCodePoint(0x2800 + pattern);
  },
  axis: '─',
  corner: '└',
  tick: '┤',
  threshold: '┄',
  bar: '━',
  faintBar: '╌',
  instant: '◆',
};

/** One dot a character, for terminals that show nothing but ASCII. */
export const ascii: Cells = {
  across: 1,
  down: 1,
  character: ({ columns, dots }, row, column) => [' ', '#', 'o'][dots[row * columns + column] ?? 0] ?? ' ',
  axis: '-',
  corner: '+',
  tick: '|',
  threshold: '-',
  bar: '=',
  faintBar: '.',
  instant: '*',
};
