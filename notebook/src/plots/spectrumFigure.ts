import type { SwingSpectrum } from '../bench/spectrumOf.js';
import { ground } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { margins } from './timeAxis.js';

export const spectrumHeight = 260;

/** Periods that people have names for [h]. */
const named: readonly (readonly [hours: number, name: string])[] = [
  [168, 'a week'],
  [24, 'a day'],
  [12, '12 h'],
  [6, '6 h'],
  [1, '1 h'],
  [1 / 6, '10 min'],
  [1 / 60, '1 min'],
  [1 / 360, '10 s'],
];

/** Swing by period, both on scales of powers; the long periods stand on the left, as in time. */
export function spectrumFigure({ period, swing }: SwingSpectrum, width: number, colours: Palette): Figure {
  const { l, r } = margins(width);
  const hours = period.map((each) => each / 3_600_000);
  const longest = hours[0] ?? 24;
  const shortest = hours.at(-1) ?? 1;
  const ticks = named.filter(([each]) => each <= longest && each >= shortest);
  return {
    data: [
      {
        type: 'scatter',
        mode: 'lines',
        x: hours,
        y: swing,
        line: { color: colours.ink, width: 1.1 },
        hovertemplate: 'every %{x:.3g} h: %{y:.3g} dB<extra></extra>',
        name: 'swing',
      },
    ],
    layout: {
      width,
      height: spectrumHeight,
      margin: { l: l + 8, r, t: 8, b: 44 },
      ...ground(colours),
      hoverlabel: { bgcolor: colours.panel, bordercolor: colours.soft, font: { color: colours.ink, size: 13 } },
      showlegend: false,
      dragmode: false,
      hovermode: 'x',
      xaxis: {
        type: 'log',
        range: [Math.log10(longest), Math.log10(shortest)],
        fixedrange: true,
        tickvals: ticks.map(([each]) => each),
        ticktext: ticks.map(([, name]) => name),
        gridcolor: colours.rule,
        linecolor: colours.soft,
        showline: true,
        ticks: 'outside',
        ticklen: 4,
        title: { text: 'period', font: { size: 11 }, standoff: 6 },
      },
      yaxis: {
        type: 'log',
        fixedrange: true,
        dtick: 1,
        gridcolor: colours.rule,
        linecolor: colours.soft,
        showline: true,
        tickformat: '~g',
        title: { text: width < 520 ? '' : 'swing [dB]', font: { size: 11 }, standoff: 4 },
      },
    },
  };
}
