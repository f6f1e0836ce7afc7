import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import type { Line } from '../bench/reading.js';
import { scaledThreshold } from '../bench/scaled.js';
import type { Scale } from '../sheet/sheet.js';
import { ground, valuesWithin } from './ground.js';
import type { Lane } from './lane.js';
import { bars } from './laneBars.js';
import { shading, thresholdNames, thresholds } from './laneShapes.js';
import { panel, states } from './laneSignals.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { axisHeight, margins, timeAxis } from './timeAxis.js';

/*
 * One beam's lane: above, its findings as named bars; below, its line with the thresholds. A finding of short extent is
 * also shaded behind the line; the chosen one always is.
 */

/** Height of a row of bars [px]. */
const barHeight = 20;
/** Height of the line's part of a lane [px]. */
const lineHeight = 148;

const units: Readonly<Record<Scale, string>> = {
  obscuration: 'obscuration [%]',
  level: 'level [%]',
  loss: 'loss [dB]',
};

/** Height of a lane [px]. */
export const laneHeight = (rows: number, lowest: boolean): number =>
  rows * barHeight + (rows > 0 ? 6 : 0) + lineHeight + (lowest ? axisHeight : 10);

/** The picture of a lane. */
export function laneFigure(lane: Lane, width: number, colours: Palette): Figure {
  const { line, window, zone, scale } = lane;
  const { rows } = lane;
  const height = laneHeight(rows, lane.lowest);
  const bottom = lane.lowest ? axisHeight : 10;
  // Half of a value may stand above the line's part; there is room for it below the bars.
  const top = rows > 0 ? 0 : 6;
  const inner = height - bottom - top;
  const share = (rows * barHeight) / inner;
  const range = valueRange(lane);
  const { l, r } = margins(width);
  const shapes: Partial<Shape>[] = [...shading(lane, colours), ...thresholds(lane, range, colours)];
  const layout: Partial<Layout> = {
    width,
    height,
    margin: { l, r, t: top, b: bottom },
    ...ground(colours),
    showlegend: false,
    dragmode: 'zoom',
    hovermode: 'closest',
    hoverlabel: {
      bgcolor: colours.panel,
      bordercolor: colours.soft,
      font: { color: colours.ink, size: 13 },
      align: 'left',
    },
    xaxis: {
      ...timeAxis(window, zone, colours, lane.lowest, width),
      anchor: 'y',
      domain: [0, 1],
    },
    yaxis: {
      ...valuesWithin,
      domain: [0, rows > 0 ? 1 - share - 6 / inner : 1],
      range: [...range],
      fixedrange: true,
      gridcolor: colours.rule,
      zeroline: false,
      nticks: 5,
      ticks: 'outside',
      ticklen: 3,
      tickcolor: colours.rule,
      linecolor: colours.soft,
      showline: true,
      title: { text: width < 520 ? '' : units[scale], font: { size: 11 }, standoff: 4 },
      hoverformat: '.2f',
    },
    yaxis2: {
      domain: [rows > 0 ? 1 - share : 1, 1],
      range: [Math.max(1, rows) - 0.5, -0.5],
      fixedrange: true,
      visible: false,
      anchor: 'x',
    },
    shapes,
    annotations: thresholdNames(lane, range, colours),
    bargap: 0,
    barmode: 'overlay',
  };
  return {
    data: [
      lineTrace(line, lane.steps, colours),
      ...bars(lane, width - l - r, colours),
      ...states(lane, width - l - r, colours),
      ...panel(lane, range, colours),
    ],
    layout,
  };
}

function lineTrace({ clock, value }: Line, steps: boolean, colours: Palette): Data {
  return {
    type: 'scatter',
    mode: 'lines',
    x: [...clock],
    y: value,
    line: { color: colours.ink, width: 1.1, shape: steps ? 'hv' : 'linear', simplify: true },
    connectgaps: false,
    hoverinfo: 'skip',
    name: 'line',
  };
}

/** Extent of the axis: what is in sight, and the thresholds where asked for. */
function valueRange({ line, scale, reach, alarmThreshold, faultThreshold }: Lane): [number, number] {
  const clean = scaledThreshold(0, scale);
  let low = clean;
  let high = clean;
  for (const value of line.value) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (reach === 'thresholds')
    for (const threshold of [alarmThreshold, faultThreshold]) {
      low = Math.min(low, scaledThreshold(threshold, scale));
      high = Math.max(high, scaledThreshold(threshold, scale));
    }
  const least = scale === 'loss' ? 0.25 : 4;
  const pad = Math.max(high - low, least) * 0.07;
  if (high - low < least) return scale === 'level' ? [high - least, high + pad] : [low - pad, low + least];
  return [low - pad, high + pad];
}
