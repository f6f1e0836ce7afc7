import type { Data, Layout } from 'plotly.js-dist-min';
import type { DayFold } from '../bench/dayFold.js';
import { scaled } from '../bench/scaled.js';
import type { Scale } from '../sheet/sheet.js';
import { ground, valuesWithin } from './ground.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';
import { margins, tickFormats } from './timeAxis.js';

export const foldHeight = 330;

/** The day-folded log as a map of one hue: the further from the paper, the more light is lost. */
export function foldFigure(fold: DayFold, scale: Scale, zoneName: string, width: number, colours: Palette): Figure {
  const { l } = margins(width);
  const columns = fold.dates.length;
  const values = Float64Array.from(fold.level, (level) => scaled(level, scale));
  const [low, high] = extent(values);
  const z = Array.from({ length: fold.rows }, (_, row) => values.subarray(row * columns, (row + 1) * columns));
  const ramp: [number, string][] = [
    [0, colours.panel],
    [0.5, colours.band],
    [1, colours.deep],
  ];
  const data: Data[] = [
    {
      type: 'heatmap',
      x: [...fold.dates],
      y: Array.from({ length: fold.rows }, (_, row) => ((row + 0.5) * 24) / fold.rows),
      z: z as unknown as number[][],
      zmin: low,
      zmax: high,
      zsmooth: false,
      colorscale: scale === 'level' ? ramp.map(([at], i) => [at, ramp[2 - i]?.[1] ?? ''] as [number, string]) : ramp,
      hoverongaps: false,
      hovertemplate: `%{x|%d %b %Y}<br>%{y:.1f} h: %{z:.2f} ${scale === 'loss' ? 'dB' : '%'}<extra></extra>`,
      colorbar: {
        ...valuesWithin,
        thickness: 10,
        outlinewidth: 0,
        len: 1,
        tickfont: { size: 11 },
        title: { text: scale === 'loss' ? 'loss [dB]' : `${scale} [%]`, side: 'right', font: { size: 11 } },
      },
    } as Data,
  ];
  const layout: Partial<Layout> = {
    width,
    height: foldHeight,
    margin: { l, r: 70, t: 12, b: 44 },
    ...ground(colours),
    hoverlabel: { bgcolor: colours.panel, bordercolor: colours.soft, font: { color: colours.ink, size: 13 } },
    dragmode: false,
    xaxis: {
      type: 'date',
      fixedrange: true,
      showgrid: false,
      linecolor: colours.soft,
      showline: true,
      ticks: 'outside',
      ticklen: 4,
      nticks: width < 520 ? 4 : 9,
      tickformatstops: tickFormats,
      title: { text: plain(`date in ${zoneName}`), font: { size: 11 }, standoff: 6 },
    },
    yaxis: {
      ...valuesWithin,
      range: [24.01, -0.01],
      fixedrange: true,
      showgrid: false,
      tickvals: [0, 6, 12, 18, 24],
      ticktext: ['00:00', '06:00', '12:00', '18:00', '24:00'],
      ticks: 'outside',
      ticklen: 3,
      linecolor: colours.soft,
      showline: true,
      zeroline: false,
    },
  };
  return { data, layout };
}

/** From the second to the ninety-eighth hundredth: a single deep dip does not wash out the rest. */
function extent(values: Float64Array): [number, number] {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  const low = at(0.02);
  return [low, Math.max(at(0.98), low + 0.5)];
}
