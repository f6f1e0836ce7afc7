import type { Layout } from 'plotly.js-dist-min';
import type { Palette } from './palette.js';

/** What every plot stands on: the sheet shows through, and the words are the sheet's. */
export const ground = (colours: Palette): Pick<Layout, 'paper_bgcolor' | 'plot_bgcolor' | 'font'> => ({
  paper_bgcolor: 'rgba(0,0,0,0)',
  plot_bgcolor: 'rgba(0,0,0,0)',
  font: { family: '"Source Sans 3 Variable", sans-serif', size: 12, color: colours.soft },
});
