import type { Data } from 'plotly.js-dist-min';
import type { SiteZone } from '../bench/siteZone.js';
import { plain } from './plotly.js';

/*
 * Names in and beside the bars of a lane, as texts of their own: of the texts that belong to its bars the library measures
 * each, for which the browser lays the page out each time. That is the larger part of drawing a lane with many findings.
 */

/** A name and where it begins, or ends. */
export interface NameOnBar {
  readonly at: number;
  /** Whether it ends there. */
  readonly ends?: boolean;
  readonly row: number;
  readonly name: string;
  readonly colour: string;
}

/** Room between an edge of a bar and its name [px]. */
const room = 4;

/** Names; none where there are none. */
export function namesOnBars(names: readonly NameOnBar[], perPixel: number, size: number, zone: SiteZone): Data[] {
  const written = names.filter(({ name }) => name !== '');
  if (written.length === 0) return [];
  return [
    {
      type: 'scatter',
      mode: 'text',
      x: written.map(({ at, ends }) => zone.wall(at + (ends ? -room : room) * perPixel)),
      y: written.map(({ row }) => row),
      xaxis: 'x',
      yaxis: 'y2',
      text: written.map(({ name }) => plain(name)),
      textposition: written.map(({ ends }) => (ends ? 'middle left' : 'middle right')),
      textfont: { size, color: written.map(({ colour }) => colour) },
      hoverinfo: 'skip',
      name: 'names',
    } as unknown as Data,
  ];
}
