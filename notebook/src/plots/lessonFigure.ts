import type { Lesson } from 'beamkeep/planning';
import type { Data, Layout } from 'plotly.js-dist-min';
import { ground, namesAbove, ruled } from './ground.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';
import { margins } from './timeAxis.js';

export const lessonHeight = 300;

const dashes = ['solid', 'dash', 'dot', 'dashdot'] as const;

/**
 * The curves of a lesson: told apart by their dashes and their names, not by a colour. Two that have no unit in common
 * have an axis each, left and right.
 */
export function lessonFigure({ x, y, series, lines }: Lesson, width: number, colours: Palette): Figure {
  const apart = y.unit === '' && series.length === 2;
  const { l, r } = margins(width);
  const data: Data[] = series.map(({ name, x: across, y: up }, row) => ({
    type: 'scatter',
    mode: 'lines',
    x: across,
    y: up.map((value) => (Number.isFinite(value) ? value : Number.NaN)),
    name: plain(name),
    yaxis: apart && row === 1 ? 'y2' : 'y',
    line: { color: row === 0 ? colours.ink : colours.accent, width: 1.8, dash: dashes[row % dashes.length] ?? 'solid' },
    hovertemplate: `%{x:.3g} ${plain(x.unit)}: %{y:.3g} ${plain(y.unit)}<extra>${plain(name)}</extra>`,
  }));
  const layout: Partial<Layout> = {
    width,
    height: lessonHeight,
    margin: { l, r: apart ? l : r, t: 30, b: 44 },
    ...ground(colours),
    ...namesAbove(colours, 1.02),
    xaxis: {
      ...ruled(colours),
      ticks: 'outside',
      ticklen: 4,
      title: { text: plain(axisWords(x)), font: { size: 11 }, standoff: 6 },
    },
    yaxis: {
      ...ruled(colours),
      ...(apart ? { rangemode: 'tozero' as const } : {}),
      title: {
        text: width < 520 ? '' : plain(apart ? (series[0]?.name ?? '') : axisWords(y)),
        font: { size: 11 },
        standoff: 4,
      },
    },
    ...(apart
      ? {
          yaxis2: {
            ...ruled(colours),
            overlaying: 'y' as const,
            side: 'right' as const,
            rangemode: 'tozero' as const,
            showgrid: false,
            title: { text: width < 520 ? '' : plain(series[1]?.name ?? ''), font: { size: 11 }, standoff: 4 },
          },
        }
      : {}),
    shapes: lines.map(({ y: at }) => ({
      type: 'line' as const,
      xref: 'paper' as const,
      x0: 0,
      x1: 1,
      y0: at,
      y1: at,
      line: { color: colours.warm, width: 1.3, dash: 'dash' as const },
    })),
    annotations: lines.map(({ words, y: at }) => ({
      xref: 'paper',
      x: 1,
      y: at,
      xanchor: 'right',
      yanchor: 'bottom',
      text: plain(words),
      showarrow: false,
      font: { size: 11, color: colours.warm },
    })) as NonNullable<Layout['annotations']>,
  };
  return { data, layout };
}

/** What an axis is, and its unit unless the words say it. */
const axisWords = ({ words, unit }: Lesson['x']): string =>
  unit === '' || words.split(' ').includes(unit) ? words : `${words} [${unit}]`;
