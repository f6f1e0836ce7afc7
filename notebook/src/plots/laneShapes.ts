import type { Layout, Shape } from 'plotly.js-dist-min';
import type { NumberedFinding } from '../bench/reading.js';
import { scaledThreshold } from '../bench/scaled.js';
import type { SiteZone } from '../bench/siteZone.js';
import type { Lane } from './lane.js';
import type { Palette } from './palette.js';

/**
 * Shading behind the line: of findings short enough to be local, and of the chosen one. However many stretches, it is
 * two shapes at most: a shape of its own for each would cost as much to draw as all the rest of a lane. Where stretches
 * overlap, the shape is filled all the same: all turn the same way.
 */
export function shading({ strips, window, zone, chosen }: Lane, colours: Palette): Partial<Shape>[] {
  const least = (window.to - window.from) / 500;
  const areas = (findings: readonly NumberedFinding[]): string =>
    findings
      .flatMap(spansOf)
      .filter(([start, end]) => start <= window.to && end >= window.from)
      .map(([start, end]) => `M${inPath(zone, start)},0V1H${inPath(zone, Math.max(end, start + least))}V0Z`)
      .join('');
  const findings = strips.map(({ finding }) => finding);
  const local = findings.filter(({ number, episodes, start, end }) => {
    const short = episodes === undefined && end - start <= 0.2 * (window.to - window.from);
    return short && number !== chosen;
  });
  return [
    { path: areas(local), fillcolor: colours.band, opacity: 0.2 },
    { path: areas(findings.filter(({ number }) => number === chosen)), fillcolor: colours.warm, opacity: 0.22 },
  ]
    .filter(({ path }) => path !== '')
    .map((shape) => ({
      ...shape,
      type: 'path',
      fillrule: 'nonzero',
      layer: 'below',
      xref: 'x',
      yref: 'y domain',
      line: { width: 0 },
    }));
}

const spansOf = ({ episodes, start, end }: NumberedFinding): readonly (readonly [number, number])[] =>
  episodes ?? [[start, end]];

/** An instant in a path, where a space would end it. */
const inPath = (zone: SiteZone, instant: number): string => zone.wall(instant).replace(' ', '_');

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
