import type { Lesson } from 'beamkeep/planning';
import type { Data, Layout } from 'plotly.js-dist-min';
import { ground, namesAbove, ruled } from './ground.js';
import { margins } from './laneFigure.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';

export const lessonHeight = 300;

const dashes = ['solid', 'dash', 'dot', 'dashdot'] as const;

/** The curves of a lesson: told apart by their dashes and their names, not by a colour. */
export function lessonFigure({ x, y, series, lines }: Lesson, width: number, colours: Palette): Figure {
  const { l, r } = margins(width);
  const data: Data[] = series.map(({ name, x: across, y: up }, row) => ({
    type: 'scatter',
    mode: 'lines',
    x: across,
    y: up.map((value) => (Number.isFinite(value) ? value : Number.NaN)),
    name: plain(name),
    line: { color: row === 0 ? colours.ink : colours.accent, width: 1.8, dash: dashes[row % dashes.length] ?? 'solid' },
    hovertemplate: `%{x:.3g} ${plain(x.unit)}: %{y:.3g} ${plain(y.unit)}<extra>${plain(name)}</extra>`,
  }));
  const layout: Partial<Layout> = {
    width,
    height: lessonHeight,
    margin: { l, r, t: 30, b: 44 },
    ...ground(colours),
    ...namesAbove(colours, 1.02),
    xaxis: {
      ...ruled(colours),
      ticks: 'outside',
      ticklen: 4,
      title: { text: plain(`${x.words} [${x.unit}]`), font: { size: 11 }, standoff: 6 },
    },
    yaxis: {
      ...ruled(colours),
      title: { text: width < 520 ? '' : plain(`${y.words} [${y.unit}]`), font: { size: 11 }, standoff: 4 },
    },
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
