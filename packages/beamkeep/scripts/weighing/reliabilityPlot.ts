import type { ReliabilityBin } from '../../../../tests/evaluation/score.js';
import { wilson } from '../../../../tests/evaluation/uncertainty.js';

/* A picture of how far confidence can be taken at its word: share of right findings over confidence, in tenths. */

const size = 420;
const margin = { left: 64, top: 56, right: 24, bottom: 64 };
const width = margin.left + size + margin.right;
const height = margin.top + size + margin.bottom;
const x = (share: number): string => (margin.left + share * size).toFixed(1);
const y = (share: number): string => (margin.top + (1 - share) * size).toFixed(1);

/** Bins before and after weighing as an SVG picture that needs nothing else. */
export function reliabilityPlot(before: readonly ReliabilityBin[], after: readonly ReliabilityBin[]): string {
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1];
  const grid = ticks.flatMap((share) => [
    `<path class="grid" d="M${x(share)} ${y(0)}V${y(1)}M${x(0)} ${y(share)}H${x(1)}"/>`,
    `<text x="${x(share)}" y="${margin.top + size + 22}" text-anchor="middle">${share}</text>`,
    `<text x="${margin.left - 10}" y="${(Number(y(share)) + 4).toFixed(1)}" text-anchor="end">${share}</text>`,
  ]);
  const total = (bins: readonly ReliabilityBin[]): number => bins.reduce((sum, { n }) => sum + n, 0);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d">
<title id="t">Reliability of confidence</title>
<desc id="d">Share of right findings over stated confidence, in tenths, on simulated logs that the weights never saw; the diagonal is perfect.</desc>
<style>
text { font: 13px system-ui, sans-serif; fill: #222 }
.grid { stroke: #ddd; fill: none }
.ideal { stroke: #777; stroke-dasharray: 4 4 }
.before { stroke: #b45309; fill: #fff }
.after { stroke: #1d4ed8; fill: #1d4ed8 }
path.before, path.after { fill: none; stroke-width: 1.5 }
</style>
<rect width="${width}" height="${height}" fill="#fff"/>
${grid.join('\n')}
<path class="ideal" d="M${x(0)} ${y(0)}L${x(1)} ${y(1)}"/>
${marks(before, 'before')}
${marks(after, 'after')}
<circle class="before" cx="${margin.left + 8}" cy="18" r="5"/><text x="${margin.left + 20}" y="22">plain scores (n ${total(before)})</text>
<circle class="after" cx="${margin.left + 208}" cy="18" r="5"/><text x="${margin.left + 220}" y="22">weighed (n ${total(after)})</text>
<text x="${margin.left + 20}" y="42">bars: 95 % intervals (Wilson)</text>
<text x="${margin.left + size / 2}" y="${height - 18}" text-anchor="middle">confidence</text>
<text transform="translate(18 ${margin.top + size / 2}) rotate(-90)" text-anchor="middle">share of findings that are right</text>
</svg>
`;
}

/** One circle a bin with its interval, joined by a line. */
function marks(bins: readonly ReliabilityBin[], name: string): string {
  const path = bins.map(({ confidence, right }, k) => `${k === 0 ? 'M' : 'L'}${x(confidence)} ${y(right)}`).join('');
  const points = bins.map(({ confidence, right, n }) => {
    const [low, high] = wilson(right * n, n);
    return (
      `<path class="${name}" d="M${x(confidence)} ${y(low)}V${y(high)}"/>` +
      `<circle class="${name}" cx="${x(confidence)}" cy="${y(right)}" r="5"/>`
    );
  });
  return [`<path class="${name}" d="${path}"/>`, ...points].join('\n');
}
