import type { Reflector } from '../../optics/index.js';
import { type Markup, svg } from '../page/markup.js';
import { figure } from '../words/figure.js';

/** From where the cover comes: one edge, or both ways from the middle. */
export type CoverWay = 'edge' | 'middle';

/** How far a cover must reach for one obscuration. */
export interface CoverMark {
  /** [%] */
  readonly obscuration: number;
  /** Width of the covered strip [mm]. */
  readonly millimetres: number;
}

/** What the words below the scale need [mm]. */
const leastWidth = 150;

/** Labels nearer to each other than this are left out [mm]. */
const labelRoom = 3.4;

const sizeOf = (reflector: Reflector): number => (reflector.shape === 'round' ? reflector.diameter : reflector.width);

const mm = (value: number): string => value.toFixed(2);

/** Draws a scale in millimetres, marks as they are given. */
export function scaleDrawing(reflector: Reflector, way: CoverWay, marks: readonly CoverMark[], lit: boolean): Markup {
  const size = sizeOf(reflector);
  const [margin, top, strip] = [8, 12, 26];
  const width = Math.max(size, leastWidth) + 2 * margin;
  const height = top + strip + 26;
  const name = `${reflector.shape === 'round' ? `round reflector, ${figure(size)} mm` : `reflector ${figure(size)} mm wide`}, ${
    lit ? 'lit by the lobe' : 'evenly lit'
  }, cover ${way === 'edge' ? 'from the left edge' : 'from the middle'}`;
  let lastLabel = Number.NEGATIVE_INFINITY;
  /** Whether a mark gets its number: the tens first, and none upon another. */
  const labelled = (place: number, obscuration: number): boolean => {
    const wanted = (obscuration % 10 === 0 || marks.length < 12) && place - lastLabel >= labelRoom;
    if (wanted) lastLabel = place;
    return wanted;
  };
  const places = marks.flatMap(({ obscuration, millimetres }) =>
    way === 'edge'
      ? [{ obscuration, place: millimetres, label: labelled(millimetres, obscuration) }]
      : [
          { obscuration, place: (size - millimetres) / 2, label: false },
          { obscuration, place: (size + millimetres) / 2, label: labelled((size + millimetres) / 2, obscuration) },
        ],
  );
  const line = (x: number, y1: number, y2: number, weight = 0.2) =>
    svg`<line x1="${mm(x)}" y1="${mm(y1)}" x2="${mm(x)}" y2="${mm(y2)}" stroke="#000" stroke-width="${weight}"/>`;
  return svg`<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" role="img" aria-label="Cover scale, ${name}" font-family="sans-serif">
<title>Cover scale, ${name}</title>
<rect width="${mm(width)}" height="${mm(height)}" fill="#fff"/>
<text x="${margin}" y="6" font-size="3.2">Cover scale, % obscuration: ${name}</text>
<rect x="${margin}" y="${top}" width="${mm(size)}" height="${strip}" fill="none" stroke="#000" stroke-width="0.3"/>
${places.map(({ place, obscuration, label: shown }) => {
  const long = obscuration % 10 === 0;
  const x = margin + place;
  const label = svg`<text transform="translate(${mm(x + 1)} ${mm(top + strip - 2)}) rotate(-90)" font-size="${long ? 3.2 : 2.4}">${figure(obscuration)}</text>`;
  return svg`${line(x, top, top + (long ? 14 : 8), long ? 0.35 : 0.2)}
${shown && label}
`;
})}${way === 'middle' && line(margin + size / 2, top, top + strip, 0.2)}<line x1="${margin}" y1="${mm(top + strip + 8)}" x2="${margin + 50}" y2="${mm(top + strip + 8)}" stroke="#000" stroke-width="0.5"/>
${line(margin, top + strip + 6, top + strip + 10, 0.5)}${line(margin + 50, top + strip + 6, top + strip + 10, 0.5)}
<text x="${margin}" y="${mm(top + strip + 15)}" font-size="3.2">This bar is 50 mm when printed at 100 %. If it is not, the scale is wrong.</text>
<text x="${margin}" y="${mm(top + strip + 20)}" font-size="3.2">A cover on the reflector is met once. Lay the box along the reflector, edge on edge.</text>
</svg>
`;
}
