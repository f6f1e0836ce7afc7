import type { Line, Window } from '../bench/reading.js';
import type { SiteZone } from '../bench/siteZone.js';
import { ground, valuesWithin } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { axisHeight, margins, timeAxis } from './timeAxis.js';

/** Height of the temperature lane [px]. */
export const temperatureHeight = 100 + axisHeight;

/** The temperature near the structure, under the lanes of the beams and on the same time axis. */
export function temperatureFigure(line: Line, window: Window, zone: SiteZone, width: number, colours: Palette): Figure {
  const { l, r } = margins(width);
  return {
    data: [
      {
        type: 'scatter',
        mode: 'lines',
        x: [...line.clock],
        y: line.value,
        line: { color: colours.accent, width: 1.1 },
        connectgaps: false,
        hoverinfo: 'skip',
        name: 'temperature',
      },
    ],
    layout: {
      width,
      height: temperatureHeight,
      margin: { l, r, t: 6, b: axisHeight },
      ...ground(colours),
      showlegend: false,
      dragmode: 'zoom',
      hovermode: false,
      xaxis: timeAxis(window, zone, colours, true, width),
      yaxis: {
        ...valuesWithin,
        fixedrange: true,
        gridcolor: colours.rule,
        zeroline: false,
        nticks: 4,
        ticks: 'outside',
        ticklen: 3,
        tickcolor: colours.rule,
        linecolor: colours.soft,
        showline: true,
        title: { text: width < 520 ? '' : 'near roof [°C]', font: { size: 11 }, standoff: 4 },
      },
    },
  };
}
