import { describe, expect, it } from 'vitest';
import { chart } from './chart.js';

const plain = { title: 'A <test>', xLabel: 's', yLabel: '%' };

describe('chart', () => {
  it('draws lines and dots, levels and places, each with its words', () => {
    const { markup } = chart({
      ...plain,
      series: [
        {
          kind: 'line',
          points: [
            [0, 0],
            [10, 100],
          ],
        },
        { kind: 'dots', points: [[5, 50]] },
      ],
      levels: [{ y: 35, label: 'alarm 35 %' }],
      places: [{ x: 2, label: 'here' }],
      stretches: [{ from: 4, to: 6, label: 'clean' }],
    });
    expect(markup).toContain('aria-label="A &lt;test&gt;"');
    for (const words of ['alarm 35 %', 'here', 'clean']) expect(markup).toContain(`>${words}</text>`);
    expect(markup.match(/<circle /g)).toHaveLength(1);
    expect(markup).not.toMatch(/NaN|Infinity/);
  });
  it('breaks a line where a point is missing', () => {
    const { markup } = chart({
      ...plain,
      series: [
        {
          kind: 'line',
          points: [
            [0, 1],
            [1, Number.NaN],
            [2, 1],
            [3, 2],
          ],
        },
      ],
    });
    expect(markup.match(/d="([^"]*)"/)?.[1]?.match(/M/g)).toHaveLength(2);
  });
  it('draws a level line and a single point without a range of its own', () => {
    expect(
      chart({
        ...plain,
        series: [
          {
            kind: 'line',
            points: [
              [1, 5],
              [2, 5],
            ],
          },
        ],
      }).markup,
    ).not.toMatch(/NaN|Infinity/);
    expect(chart({ ...plain, series: [{ kind: 'dots', points: [[1, 5]] }] }).markup).not.toMatch(/NaN|Infinity/);
  });
});
