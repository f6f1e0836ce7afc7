import type { Layout, LayoutAxis } from 'plotly.js-dist-min';
import type { Palette } from './palette.js';

/** What every plot stands on: the sheet shows through, and the words are the sheet's. */
export const ground = (colours: Palette): Pick<Layout, 'paper_bgcolor' | 'plot_bgcolor' | 'font'> => ({
  paper_bgcolor: 'rgba(0,0,0,0)',
  plot_bgcolor: 'rgba(0,0,0,0)',
  font: { family: '"Source Sans 3 Variable", sans-serif', size: 12, color: colours.soft },
});

/**
 * The values up an axis, which never stand out of their plot: asked to look after that, the library would measure each.
 */
export const valuesWithin = { ticklabeloverflow: 'allow' } as const;

/** Names of the lines above a plot, and the words under the cursor. They choose nothing. */
export const namesAbove = (
  colours: Palette,
  y: number,
): Pick<Layout, 'hoverlabel' | 'showlegend' | 'legend' | 'dragmode'> => ({
  hoverlabel: { bgcolor: colours.panel, bordercolor: colours.soft, font: { color: colours.ink, size: 13 } },
  showlegend: true,
  legend: { orientation: 'h', x: 0, y, yanchor: 'bottom', itemclick: false, itemdoubleclick: false },
  dragmode: false,
});

/** The rules of an axis that stays where it is. */
export const ruled = (colours: Palette): Partial<LayoutAxis> => ({
  fixedrange: true,
  gridcolor: colours.rule,
  zeroline: false,
  linecolor: colours.soft,
  showline: true,
});
