import { lobeLevel } from '../../../optics/index.js';
import type { AimJson } from '../../answers/aimAnswer.js';
import { numberIn } from '../../documents/numbersOut.js';
import { figure, printed } from '../../words/figure.js';
import { type Markup, svg } from '../markup.js';
import { chart, type Point } from './chart.js';

/** The fitted lobe of an answer, as numbers. */
const lobeOf = ({ fit }: AimJson) => ({
  peak: numberIn(fit.peak.value),
  floor: numberIn(fit.floor.value),
  centre: fit.centre.map(({ value }) => numberIn(value)),
  halfAngle: fit.halfAngle.map(({ value }) => numberIn(value)),
  power: numberIn(fit.power.value),
});

/** Points of the curve through a scan of one axis. */
const curvePoints = 121;

/** An aim scan: over one axis the readings and the lobe, over two a map of them. */
export const aimDrawing = (answer: AimJson): Markup =>
  answer.axes.length === 1 ? oneAxis(answer) : answer.axes.length === 2 ? twoAxes(answer) : svg``;

function oneAxis(answer: AimJson): Markup {
  const angles = (answer.scan.angles[0] ?? []).map(numberIn);
  const points = answer.scan.power.map((power, row): Point => [angles[row] ?? Number.NaN, numberIn(power)]);
  const known = angles.filter(Number.isFinite);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const places = Float64Array.from({ length: curvePoints }, (_, at) => low + ((high - low) * at) / (curvePoints - 1));
  const levels = lobeLevel(lobeOf(answer), [places]);
  const [centre] = answer.fit.centre;
  const left = answer.left?.at[0];
  return chart({
    title: `Aim scan of beam ${answer.beam}: readings and fitted lobe`,
    xLabel: `${answer.axes[0] ?? 'angle'} [degrees]`,
    yLabel: 'received power',
    series: [
      { kind: 'thin', points: Array.from(places, (place, at): Point => [place, levels[at] as number]) },
      { kind: 'dots', points },
    ],
    places: [
      ...(centre ? [{ x: numberIn(centre.value), label: 'peak' }] : []),
      ...(left === undefined ? [] : [{ x: left, label: 'left here' }]),
      ...answer.flags.flatMap(({ kind, at }) =>
        at?.[0] === undefined ? [] : [{ x: at[0], label: kind.replace('-', ' ') }],
      ),
    ],
    yRange: [0, 0],
  });
}

const size = 300;
const margin = 42;

function twoAxes(answer: AimJson): Markup {
  const [first = [], second = []] = answer.scan.angles.map((column) => column.map(numberIn));
  const power = answer.scan.power.map(numberIn);
  const known = [...first, ...second].filter(Number.isFinite);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const most = Math.max(...power.filter(Number.isFinite));
  const scale = (size - 2 * margin) / (high - low || 1);
  const x = (angle: number) => (margin + (angle - low) * scale).toFixed(1);
  const y = (angle: number) => (size - margin - (angle - low) * scale).toFixed(1);
  const { centre, halfAngle } = lobeOf(answer);
  const [cx = 0, cy = 0] = centre;
  const [rx = 0, ry = 0] = halfAngle;
  const dots = power.flatMap((value, row) => {
    const [px, py] = [first[row] ?? Number.NaN, second[row] ?? Number.NaN];
    if (![px, py, value].every(Number.isFinite)) return [];
    const shade = Math.round(255 * (1 - Math.min(Math.max(value / most, 0), 1)));
    return [
      svg`<circle cx="${x(px)}" cy="${y(py)}" r="5" fill="rgb(${shade},${shade},${shade})" stroke="#888" stroke-width="0.4"/>`,
    ];
  });
  const [leftX, leftY] = answer.left?.at ?? [];
  const title = `Aim scan of beam ${answer.beam}: readings over two axes, darker where more light came back`;
  const text = (px: number, py: number, content: string, anchor = 'middle') =>
    svg`<text x="${px}" y="${py}" font-size="11" text-anchor="${anchor}">${content}</text>`;
  return svg`<svg class="map" viewBox="0 0 ${size} ${size}" role="img" aria-label="${title}" font-family="sans-serif" fill="#111">
<title>${title}</title>
<rect x="${margin}" y="${margin}" width="${size - 2 * margin}" height="${size - 2 * margin}" fill="none" stroke="#444"/>
${dots}
<ellipse cx="${x(cx)}" cy="${y(cy)}" rx="${(rx * scale).toFixed(1)}" ry="${(ry * scale).toFixed(1)}" fill="none" stroke="#111" stroke-width="1.2" stroke-dasharray="5 3"/>
<path d="M${x(cx)} ${y(cy)}m-6 0h12m-6 -6v12" stroke="#fff" stroke-width="2"/>
${
  leftX !== undefined && leftY !== undefined
    ? svg`<circle cx="${x(leftX)}" cy="${y(leftY)}" r="8" fill="none" stroke="#c00" stroke-width="1.6"/>`
    : undefined
}
${text(margin, size - margin + 15, printed(figure(low)), 'start')}${text(size - margin, size - margin + 15, printed(figure(high)), 'end')}
${text(size / 2, size - 8, `${answer.axes[0] ?? ''} [degrees]`)}
<text transform="translate(14 ${size / 2}) rotate(-90)" font-size="11" text-anchor="middle">${answer.axes[1] ?? ''} [degrees]</text>
${text(size / 2, 16, 'cross: peak; dashes: half power; ring: left here')}
</svg>`;
}
