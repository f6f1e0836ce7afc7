import type { AimJson } from 'beamkeep/commissioning';
import { lobeLevel } from 'beamkeep/optics';
import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import { ground } from './ground.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';
import { margins } from './timeAxis.js';

export const scanHeight = 300;

/** Points of the curve through a scan of one axis. */
const curvePoints = 121;

/** An aim scan: the readings, the lobe and the peak that were fitted to them, and where the head was left. */
export function scanFigure(aim: AimJson, width: number, colours: Palette): Figure {
  const [first = [], second] = aim.scan.angles;
  const across = first.map(numberOf);
  const power = aim.scan.power.map(numberOf);
  const most = Math.max(...power.filter(Number.isFinite));
  const { l, r } = margins(width);
  const readings: Data = {
    type: 'scatter',
    mode: 'markers',
    x: across,
    y: second ? second.map(numberOf) : power,
    marker: second
      ? {
          symbol: 'circle-open',
          color: colours.ink,
          size: power.map((value) => 3 + 15 * Math.sqrt(Math.max(0, value / most))),
        }
      : { symbol: 'circle-open', color: colours.ink, size: 7 },
    hovertemplate: `%{x:.3g}°: %{y:.3g}<extra></extra>`,
    name: 'readings',
  };
  const { centre, halfAngle, peak, floor, power: shape } = aim.fit;
  const known = across.filter(Number.isFinite);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const places = Float64Array.from({ length: curvePoints }, (_, at) => low + ((high - low) * at) / (curvePoints - 1));
  const lobe: Data[] = second
    ? []
    : [
        {
          type: 'scatter',
          mode: 'lines',
          x: Array.from(places),
          y: Array.from(
            lobeLevel(
              {
                peak: numberOf(peak.value),
                floor: numberOf(floor.value),
                power: numberOf(shape.value),
                centre: centre.map(({ value }) => numberOf(value)),
                halfAngle: halfAngle.map(({ value }) => numberOf(value)),
              },
              [places],
            ),
          ),
          line: { color: colours.soft, width: 1 },
          hoverinfo: 'skip',
          name: 'fitted lobe',
        },
      ];
  const marks = [
    {
      at: aim.fit.centre.map(({ value }) => numberOf(value)),
      name: 'peak',
      dash: 'solid' as const,
      color: colours.accent,
    },
    ...(aim.left ? [{ at: aim.left.at, name: 'left here', dash: 'dash' as const, color: colours.warm }] : []),
  ];
  const shapes: Partial<Shape>[] = marks.flatMap(({ at, dash, color }) =>
    at.slice(0, second ? 2 : 1).map((place, axis) => ({
      type: 'line' as const,
      xref: axis === 0 ? ('x' as const) : ('paper' as const),
      yref: axis === 0 ? ('paper' as const) : ('y' as const),
      ...(axis === 0 ? { x0: place, x1: place, y0: 0, y1: 1 } : { x0: 0, x1: 1, y0: place, y1: place }),
      line: { color, width: 1.5, dash },
    })),
  );
  // Of two names that of the first line stands before it: close to each other, one would cover the other.
  const before = marks.reduce((one, other) => ((other.at[0] ?? 0) < (one.at[0] ?? 0) ? other : one));
  const axis = {
    gridcolor: colours.rule,
    zeroline: false,
    linecolor: colours.soft,
    showline: true,
    fixedrange: true,
  };
  const layout: Partial<Layout> = {
    width,
    height: scanHeight,
    margin: { l, r, t: 22, b: 44 },
    ...ground(colours),
    hoverlabel: { bgcolor: colours.panel, bordercolor: colours.soft, font: { color: colours.ink, size: 13 } },
    showlegend: false,
    dragmode: false,
    hovermode: 'closest',
    xaxis: { ...axis, title: { text: plain(`${aim.axes[0] ?? 'angle'} [degrees]`), font: { size: 11 }, standoff: 6 } },
    yaxis: {
      ...axis,
      title: {
        text: plain(second ? `${aim.axes[1] ?? 'angle'} [degrees]` : 'received'),
        font: { size: 11 },
        standoff: 4,
      },
    },
    shapes,
    annotations: marks.map(({ at, name, color }) => ({
      x: at[0] ?? 0,
      yref: 'paper',
      y: 1,
      yanchor: 'bottom',
      xanchor: marks.length > 1 && name === before.name ? 'right' : 'left',
      text: name,
      showarrow: false,
      font: { size: 11, color },
    })) as NonNullable<Layout['annotations']>,
  };
  return { data: [...lobe, readings], layout };
}

const numberOf = (value: number | 'infinite' | null): number =>
  value === null ? Number.NaN : value === 'infinite' ? Number.POSITIVE_INFINITY : value;
