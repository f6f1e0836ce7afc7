import { UsageError } from '../../columns/index.js';
import { coverFromEdge, coverFromMiddle, type Lighting, type Reflector } from '../../optics/index.js';
import { type CoverMark, type CoverWay, scaleDrawing } from './scaleDrawing.js';

/*
 * A cover scale is a strip of paper as long as the reflector is wide. Laid along it, it says how far a cover must be
 * pushed to hide so much of the light. It is true in millimetres when printed at 100 %, which a bar of 50 mm proves.
 */

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
  return { reflector, way, marks, drawing: scaleDrawing(reflector, way, marks, lighting !== undefined).markup };
}
