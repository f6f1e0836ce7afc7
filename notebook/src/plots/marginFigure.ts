import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import type { DailyLevels } from '../bench/dailyLevels.js';
import type { Forecast } from '../bench/reading.js';
import { scaled } from '../bench/scaled.js';
import { ground, valuesWithin } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { margins, tickFormats } from './timeAxis.js';

export const marginHeight = 220;

/** The slow loss of a beam, its margin, and where the one is expected to use up the other. */
export function marginFigure(
  days: DailyLevels,
  limit: number,
  forecast: Forecast | null,
  width: number,
  colours: Palette,
): Figure {
  const { l, r } = margins(width);
  const middle = days.middle.map((level) => scaled(level, 'obscuration'));
  const low = days.low.map((level) => scaled(level, 'obscuration'));
  const first = days.clock[0] ?? '';
  const last = days.clock.at(-1) ?? '';
  const end = forecast ? (forecast.high ?? later(forecast.median, first)) : last;
  const data: Data[] = [
    line(days.clock, middle, colours.soft, 1, 'median of the day'),
    line(days.clock, low, colours.ink, 1.6, 'daily low'),
  ];
  if (forecast) {
    const from = lastOf(low);
    data.unshift({
      type: 'scatter',
      mode: 'lines',
      x: [last, noon(forecast.low), forecast.high ? noon(forecast.high) : end, last],
      y: [from, limit, limit, from],
      fill: 'toself',
      fillcolor: colours.band,
      opacity: 0.35,
      line: { width: 0 },
      hoverinfo: 'skip',
      name: 'four in five futures',
    });
    data.push({
      type: 'scatter',
      mode: 'lines',
      x: [last, noon(forecast.median)],
      y: [from, limit],
      line: { color: colours.ink, width: 1.6, dash: 'dot' },
      hoverinfo: 'skip',
      name: 'as likely before as after',
    });
  }
  const shapes: Partial<Shape>[] = [
    {
      type: 'line',
      xref: 'paper',
      x0: 0,
      x1: 1,
      y0: limit,
      y1: limit,
      line: { color: colours.warm, width: 1.3, dash: 'dash' },
    },
  ];
  const least = Math.min(0, ...middle.filter(Number.isFinite));
  const layout: Partial<Layout> = {
    width,
    height: marginHeight,
    margin: { l, r, t: 8, b: 40 },
    ...ground(colours),
    showlegend: false,
    dragmode: false,
    hovermode: false,
    xaxis: {
      type: 'date',
      range: [first, `${end.slice(0, 10)} 12:00`],
      gridcolor: colours.rule,
      linecolor: colours.soft,
      showline: true,
      ticks: 'outside',
      ticklen: 4,
      nticks: width < 520 ? 4 : 9,
      tickformatstops: tickFormats,
      fixedrange: true,
    },
    yaxis: {
      ...valuesWithin,
      range: [least - 1, limit * 1.14],
      fixedrange: true,
      gridcolor: colours.rule,
      zeroline: false,
      nticks: 5,
      linecolor: colours.soft,
      showline: true,
      title: { text: width < 520 ? '' : 'slow loss [%]', font: { size: 11 }, standoff: 4 },
    },
    shapes,
    annotations: [
      {
        xref: 'paper',
        x: 0.005,
        y: limit,
        xanchor: 'left',
        yanchor: 'bottom',
        text: `${limit} %`,
        showarrow: false,
        font: { size: 11, color: colours.warm },
      },
    ] as NonNullable<Layout['annotations']>,
  };
  return { data, layout };
}

const line = (x: readonly string[], y: Float64Array, color: string, width: number, name: string): Data => ({
  type: 'scatter',
  mode: 'lines',
  x: [...x],
  y,
  line: { color, width },
  connectgaps: false,
  hoverinfo: 'skip',
  name,
});

const noon = (date: string): string => `${date} 12:00`;
const lastOf = (values: Float64Array): number => values.findLast((value) => !Number.isNaN(value)) ?? Number.NaN;

/** Where the axis ends when the forecast is open: half as far again as its median. */
function later(median: string, first: string): string {
  const from = Date.parse(first.slice(0, 10));
  const to = Date.parse(median);
  return new Date(to + 0.5 * (to - from)).toISOString().slice(0, 10);
}
