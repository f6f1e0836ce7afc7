import type { CoverMark, CoverWay } from 'beamkeep/commissioning';
import type { Look } from '../look.js';
import { plain } from '../plain.js';
import { table } from '../table.js';
import { wrap } from '../wrap.js';
import { told } from './told.js';

/** What a cover scale is told from. */
export interface CoverScaleAnswer {
  readonly way: CoverWay;
  readonly lit: string;
  readonly marks: readonly CoverMark[];
  readonly fitsOnPaper: boolean;
  readonly file: string | null;
}

/** A cover scale for people. */
export function coverScaleText(
  { way, lit, marks, fitsOnPaper, file }: CoverScaleAnswer,
  { width, colours }: Look,
): string {
  const from = way === 'edge' ? 'from one edge on' : 'across the middle';
  return `${[
    `${colours.strong('Cover scale')}  ${from}, reflector lit ${lit === 'evenly' ? 'evenly' : 'by the lobe'}`,
    table(
      [
        ['obscuration', 'cover'].map(colours.faint),
        ...marks.map(({ obscuration, millimetres }) => [told(obscuration, '%'), told(millimetres, 'mm')]),
      ],
      '  ',
    ),
    ...(file === null
      ? []
      : [wrap(`Written: ${plain(file)}. Print it at 100 %; its bar of 50 mm says whether that worked.`, width)]),
    ...(fitsOnPaper || file === null
      ? []
      : [wrap('It is wider than an A4 or Letter sheet: print it on a larger one.', width)]),
    wrap('A cover on the reflector is met once. A filter before a reflective head is met twice.', width),
  ].join('\n\n')}\n`;
}
