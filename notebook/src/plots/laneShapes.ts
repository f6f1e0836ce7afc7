import type { Layout, Shape } from 'plotly.js-dist-min';
import { scaledThreshold } from '../bench/scaled.js';
import type { Lane } from './lane.js';
import type { Palette } from './palette.js';

/** Shading behind the line: of findings short enough to be local, and of the chosen one. */
export function shading({ strips, window, zone, chosen }: Lane, colours: Palette): Partial<Shape>[] {
  const local = 0.2 * (window.to - window.from);
  const least = (window.to - window.from) / 500;
  const shapes: Partial<Shape>[] = [];
  for (const { finding } of strips) {
    const isChosen = finding.number === chosen;
    const spans = finding.episodes ?? [[finding.start, finding.end] as const];
    if (!isChosen && (finding.episodes !== undefined || finding.end - finding.start > local)) continue;
    for (const [start, end] of spans) {
      if (start > window.to || end < window.from) continue;
      shapes.push({
        type: 'rect',
        layer: 'below',
        xref: 'x',
        yref: 'y domain',
        x0: zone.wall(start),
        x1: zone.wall(Math.max(end, start + least)),
        y0: 0,
        y1: 1,
        fillcolor: isChosen ? colours.warm : colours.band,
        opacity: isChosen ? 0.22 : 0.2,
        line: { width: 0 },
      });
    }
  }
  return shapes;
}

export function thresholds(
  { scale, alarmThreshold, faultThreshold }: Lane,
  range: [number, number],
  colours: Palette,
): Partial<Shape>[] {
  return [
    { at: scaledThreshold(alarmThreshold, scale), dash: 'dash' as const, color: colours.warm },
    { at: scaledThreshold(faultThreshold, scale), dash: 'dot' as const, color: colours.soft },
  ]
    .filter(({ at }) => at >= range[0] && at <= range[1])
    .map(({ at, dash, color }) => ({
      type: 'line',
      layer: 'above',
      xref: 'paper',
      yref: 'y',
      x0: 0,
      x1: 1,
      y0: at,
      y1: at,
      line: { color, width: 1.3, dash },
    }));
}

export function thresholdNames(
  lane: Lane,
  range: [number, number],
  colours: Palette,
): NonNullable<Layout['annotations']> {
  const { scale, alarmThreshold, faultThreshold } = lane;
  return [
    { at: scaledThreshold(alarmThreshold, scale), name: `alarm ${alarmThreshold} %`, color: colours.warm },
    { at: scaledThreshold(faultThreshold, scale), name: `blocked ${faultThreshold} %`, color: colours.soft },
  ]
    .filter(({ at }) => at >= range[0] && at <= range[1])
    .map(({ at, name, color }) => ({
      xref: 'paper',
      yref: 'y',
      x: 1,
      y: at,
      xanchor: 'right',
      yanchor: scale === 'level' ? 'top' : 'bottom',
      text: name,
      showarrow: false,
      font: { size: 11, color },
      borderpad: 1,
    })) as NonNullable<Layout['annotations']>;
}
