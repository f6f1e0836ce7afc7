import { UsageError } from '../../columns/index.js';
import { coverFromEdge, coverFromMiddle, type Lighting, type Reflector } from '../../optics/index.js';
import { type Markup, svg } from '../page/markup.js';
import { figure } from '../words/figure.js';

/*
 * A cover scale is a strip of paper as long as the reflector is wide. Laid along it, it says how far a cover must be
 * pushed to hide so much of the light. It is true in millimetres when printed at 100 %, which a bar of 50 mm proves.
 */

/** From where the cover comes: one edge, or both ways from the middle. */
export type CoverWay = 'edge' | 'middle';

/** How far a cover must reach for one obscuration. */
export interface CoverMark {
  /** [%] */
  readonly obscuration: number;
  /** Width of the covered strip [mm]. */
  readonly millimetres: number;
}

/** A cover scale: its marks, and its drawing in millimetres. */
export interface CoverScale {
  readonly reflector: Reflector;
  readonly way: CoverWay;
  readonly marks: readonly CoverMark[];
  /** An SVG document, true to size when printed at 100 %. */
  readonly drawing: string;
}

/** Marks every five per cent. */
const everyFive: readonly number[] = Array.from({ length: 19 }, (_, at) => 5 * (at + 1));

/** Widest strip that an A4 sheet takes, and a Letter sheet too [mm]. */
export const widestPrint = 190;

/**
 * A scale that says how far to push a cover over a reflector.
 *
 * @param reflector shape and size [mm]
 * @param lighting lobe on the reflector; evenly lit when left out
 * @param way whether the cover comes from an edge or from the middle
 * @param obscurations marks [%], above 0 and below 100; every five when left out
 * @throws UsageError for a size or a mark that is none
 *
 * A cover on the reflector is met once, so that a mark says the obscuration itself. Source: `coverFromEdge`.
 */
export function coverScale(
  reflector: Reflector,
  lighting?: Lighting,
  way: CoverWay = 'edge',
  obscurations: readonly number[] = everyFive,
): CoverScale {
  if (!obscurations.every((value) => value > 0 && value < 100))
    throw new UsageError('cover scale: every mark must lie above 0 and below 100 %');
  const width = way === 'edge' ? coverFromEdge : coverFromMiddle;
  const marks = obscurations.map((obscuration) => ({
    obscuration,
    millimetres: width(obscuration, reflector, lighting),
  }));
  return { reflector, way, marks, drawing: drawn(reflector, way, marks, lighting !== undefined).markup };
}

const sizeOf = (reflector: Reflector): number => (reflector.shape === 'round' ? reflector.diameter : reflector.width);

const mm = (value: number): string => value.toFixed(2);

function drawn(reflector: Reflector, way: CoverWay, marks: readonly CoverMark[], lit: boolean): Markup {
  const size = sizeOf(reflector);
  const [margin, top, strip] = [8, 12, 26];
  const width = Math.max(size, 110) + 2 * margin;
  const height = top + strip + 26;
  const name = `${reflector.shape === 'round' ? `round reflector, ${figure(size)} mm` : `reflector ${figure(size)} mm wide`}, ${
    lit ? 'lit by the lobe' : 'evenly lit'
  }, cover ${way === 'edge' ? 'from the left edge' : 'from the middle'}`;
  const places = marks.flatMap((mark) =>
    way === 'edge'
      ? [{ ...mark, place: mark.millimetres, labelled: true }]
      : [
          { ...mark, place: size / 2 - mark.millimetres / 2, labelled: false },
          { ...mark, place: size / 2 + mark.millimetres / 2, labelled: true },
        ],
  );
  const line = (x: number, y1: number, y2: number, weight = 0.2) =>
    svg`<line x1="${mm(x)}" y1="${mm(y1)}" x2="${mm(x)}" y2="${mm(y2)}" stroke="#000" stroke-width="${weight}"/>`;
  return svg`<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" role="img" aria-label="Cover scale, ${name}" font-family="sans-serif">
<title>Cover scale, ${name}</title>
<rect width="${mm(width)}" height="${mm(height)}" fill="#fff"/>
<text x="${margin}" y="6" font-size="3.6">Cover scale, % obscuration: ${name}</text>
<rect x="${margin}" y="${top}" width="${mm(size)}" height="${strip}" fill="none" stroke="#000" stroke-width="0.3"/>
${places.map(({ place, obscuration, labelled }) => {
  const long = obscuration % 10 === 0;
  const x = margin + place;
  const label = svg`<text transform="translate(${mm(x + 1)} ${mm(top + strip - 2)}) rotate(-90)" font-size="${long ? 3.2 : 2.4}">${figure(obscuration)}</text>`;
  return svg`${line(x, top, top + (long ? 14 : 8), long ? 0.35 : 0.2)}
${labelled && (long || marks.length < 12) && label}
`;
})}<line x1="${margin}" y1="${mm(top + strip + 8)}" x2="${margin + 50}" y2="${mm(top + strip + 8)}" stroke="#000" stroke-width="0.5"/>
${line(margin, top + strip + 6, top + strip + 10, 0.5)}${line(margin + 50, top + strip + 6, top + strip + 10, 0.5)}
<text x="${margin}" y="${mm(top + strip + 15)}" font-size="3.2">This bar is 50 mm when printed at 100 %. If it is not, the scale is wrong.</text>
<text x="${margin}" y="${mm(top + strip + 20)}" font-size="3.2">A cover on the reflector is met once. Lay the box along the reflector, edge on edge.</text>
</svg>
`;
}
