import type { BeamStanding } from 'beamkeep/diagnosis';
import type { Data, Layout } from 'plotly.js-dist-min';
import { ground, namesAbove, ruled } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { margins } from './timeAxis.js';

export const compareHeight = 260;

/**
 * A beam day by day before and after a visit, on one axis of days: before counts back from it, after counts on. The
 * rule in the middle is the visit, the dashed line the alarm threshold.
 */
export function compareFigure(before: BeamStanding, after: BeamStanding, width: number, colours: Palette): Figure {
  const { l, r } = margins(width);
  const count = before.byDay.start.length;
  const x = [...before.byDay.start.map((_, i) => i - count), ...after.byDay.start.map((_, i) => i + 1)];
  const joined = (values: (of: BeamStanding) => readonly number[]): (number | null)[] => [
    ...values(before),
    null,
    ...values(after),
  ];
  const across = [...x.slice(0, count), 0, ...x.slice(count)];
  const line = (name: string, values: (of: BeamStanding) => readonly number[], color: string, wide: number): Data => ({
    type: 'scatter',
    mode: 'lines+markers',
    x: across,
    y: joined(values),
    name,
    line: { color, width: wide },
    marker: { color, size: wide + 2.5 },
    connectgaps: false,
    hovertemplate: `day %{x}: %{y:.2f} dB<extra>${name}</extra>`,
  });
  const limits = [before.alarmDecibels, after.alarmDecibels];
  const most = Math.max(...limits, ...before.byDay.low, ...after.byDay.low);
  const least = Math.min(0, ...before.byDay.loss, ...after.byDay.loss);
  const first = (x[0] ?? 0) - 0.5;
  const last = (x.at(-1) ?? 0) + 0.5;
  const layout: Partial<Layout> = {
    width,
    height: compareHeight,
    margin: { l, r, t: 34, b: 44 },
    ...ground(colours),
    ...namesAbove(colours, 1.02),
    xaxis: {
      ...ruled(colours),
      range: [first, last],
      ticks: 'outside',
      ticklen: 4,
      title: { text: 'days before and after', font: { size: 11 }, standoff: 6 },
    },
    yaxis: {
      ...ruled(colours),
      range: [least - 0.08 * (most - least), most + 0.1 * (most - least)],
      title: { text: width < 520 ? '' : 'loss [dB]', font: { size: 11 }, standoff: 4 },
    },
    shapes: [
      { type: 'line', x0: 0, x1: 0, yref: 'paper', y0: 0, y1: 1, line: { color: colours.soft, width: 1 } },
      ...limits.map((at, side) => ({
        type: 'line' as const,
        x0: side === 0 ? first : 0,
        x1: side === 0 ? 0 : last,
        y0: at,
        y1: at,
        line: { color: colours.warm, width: 1.3, dash: 'dash' as const },
      })),
    ],
    annotations: [
      {
        xref: 'paper',
        x: 1,
        xanchor: 'right',
        y: limits[1] ?? 0,
        yanchor: 'bottom',
        text: 'alarm',
        showarrow: false,
        font: { size: 11, color: colours.warm },
      },
    ] as NonNullable<Layout['annotations']>,
  };
  return {
    data: [
      line('daily low', ({ byDay }) => byDay.low, colours.ink, 1.7),
      line('median of the day', ({ byDay }) => byDay.loss, colours.accent, 1),
    ],
    layout,
  };
}
