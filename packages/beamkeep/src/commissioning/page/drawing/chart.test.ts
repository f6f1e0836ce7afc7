import { describe, expect, it } from 'vitest';
import { signsOf } from '../../../../../../tests/commissioning/readPage.js';
import { chart, type Point } from './chart.js';

/* The frame stands from 52 to 708 across and from 24 to 168 down. */

const plain = { title: 'A <test>', xLabel: 's', yLabel: '%' };
const line = (...points: readonly Point[]) => ({ kind: 'line', points }) as const;
const whole = { ...plain, series: [line([0, 0], [10, 100])] };
const drawn = (more: object) => chart({ ...whole, ...more }).markup;

const number = (text: string | undefined) => Number(text);
const texts = (markup: string) =>
  signsOf(markup, 'text').map(({ says, x, y }) => ({ says, x: number(x), y: number(y) }));
const textAt = (markup: string, says: string) => texts(markup).find((text) => text.says === says);
/** Ends of its paths, in the drawing's own places. */
const pathsOf = (markup: string) => signsOf(markup, 'path').map(({ d }) => d);
const dotsOf = (markup: string) => signsOf(markup, 'circle').map(({ cx, cy }) => [number(cx), number(cy)]);
const linesOf = (markup: string) =>
  signsOf(markup, 'line').map(({ x1, x2, y1, y2 }) => [x1, x2, y1, y2].map(number) as [number, number, number, number]);

describe('chart', () => {
  it('says what it is, to those who cannot see it too, and what its axes are', () => {
    const markup = drawn({});
    expect(markup).toContain('aria-label="A &lt;test&gt;"');
    expect(markup).toContain('<title>A &lt;test&gt;</title>');
    expect(textAt(markup, 's')).toMatchObject({ x: 380, y: 204 });
    expect(markup).toContain('transform="translate(13 96.0) rotate(-90)"');
    expect(signsOf(markup, 'rect')).toMatchObject([{ x: '52', y: '24', width: '656', height: '144' }]);
  });
  it('fills the frame across, and leaves a twentieth of the range above and below', () =>
    expect(pathsOf(drawn({}))).toEqual(['M52.0 161.5L708.0 30.5']));
  it('a point stands where the ticks of its numbers stand', () => {
    const markup = drawn({ series: [line([0, 0], [10, 100]), { kind: 'dots', points: [[4, 50]] }] });
    expect(dotsOf(markup)).toEqual([[314.4, 96]]);
    expect(textAt(markup, '4')).toMatchObject({ x: 314.4, y: 184 });
    expect(textAt(markup, '50')).toMatchObject({ x: 47, y: 100 }); // 4 below its line, so that it stands beside it
    expect(linesOf(markup)).toContainEqual([52, 708, 96, 96]);
    expect(linesOf(markup)).toContainEqual([314.4, 314.4, 168, 172]);
  });
  it('ticks are round numbers of the range, from its foot to its top', () =>
    expect(texts(drawn({})).map(({ says }) => says)).toEqual([
      '0',
      '50',
      '100',
      '0',
      '2',
      '4',
      '6',
      '8',
      '10',
      's',
      '%',
    ]));
  it('a level goes across the whole frame at its height, its words above its right end', () => {
    const markup = drawn({ levels: [{ y: 75, label: 'alarm' }] });
    expect(linesOf(markup)).toContainEqual([52, 708, 63.3, 63.3]);
    expect(textAt(markup, 'alarm')).toMatchObject({ x: 705, y: 59.3 });
  });
  it('a place goes down the whole frame, its words above; neighbours stand on two lines', () => {
    const markup = drawn({ places: [2, 4, 6].map((x) => ({ x, label: `step ${x}` })) });
    expect(linesOf(markup)).toContainEqual([183.2, 183.2, 24, 168]);
    expect(textAt(markup, 'step 2')).toMatchObject({ x: 183.2, y: 20 });
    expect(textAt(markup, 'step 4')).toMatchObject({ x: 314.4, y: 9 });
    expect(textAt(markup, 'step 6')).toMatchObject({ x: 445.6, y: 20 });
  });
  it('words of a place at an end stay on the sheet', () => {
    const markup = drawn({ places: [0, 10].map((x) => ({ x, label: `end ${x}` })) });
    expect(textAt(markup, 'end 0')?.x).toBe(82);
    expect(textAt(markup, 'end 10')?.x).toBe(678);
  });
  it('a stretch is shaded from its start to its end, its word in the middle; a short one can still be seen', () => {
    const markup = drawn({
      stretches: [
        { from: 4, to: 6, label: 'clean' },
        { from: 8, to: 8, label: 'short' },
      ],
    });
    expect(signsOf(markup, 'rect').slice(0, 2)).toMatchObject([
      { x: '314.4', y: '24', width: '131.2', height: '144' },
      { x: '576.8', width: '1.0' },
    ]);
    expect(textAt(markup, 'clean')).toMatchObject({ x: 380, y: 96 });
    expect(textAt(markup, 'short')?.x).toBe(576.8);
  });
  it('levels, places and a wanted range widen what is shown, and never narrow it', () => {
    const inner = [line([2, 40], [8, 60])];
    const asWhole = 'M183.2 109.1L576.8 82.9';
    expect(pathsOf(drawn({ series: inner, yRange: [0, 100], places: [0, 10].map((x) => ({ x, label: '' })) }))).toEqual(
      [asWhole],
    );
    expect(
      pathsOf(
        drawn({
          series: inner,
          levels: [0, 100].map((y) => ({ y, label: '' })),
          places: [0, 10].map((x) => ({ x, label: '' })),
        }),
      ),
    ).toEqual([asWhole]);
    expect(pathsOf(drawn({ yRange: [40, 60] }))).toEqual(pathsOf(drawn({})));
  });
  it('a line breaks where a point is missing, and goes on after it', () => {
    const missing = [line([0, 0], [4, Number.NaN], [Number.NaN, 50], [6, 0], [10, 100])];
    expect(pathsOf(drawn({ series: missing }))).toEqual(['M52.0 161.5M445.6 161.5L708.0 30.5']);
  });
  it('a dot is not drawn where either of its numbers is missing', () => {
    const points = [
      [5, 50],
      [Number.NaN, 50],
      [5, Number.NaN],
    ] satisfies Point[];
    expect(dotsOf(drawn({ series: [...whole.series, { kind: 'dots', points }] }))).toEqual([[380, 96]]);
  });
  it('what was measured is drawn stronger than a curve through it', () => {
    const weight = (kind: string) =>
      signsOf(drawn({ series: [{ ...whole.series[0], kind }] }), 'path')[0]?.['stroke-width'];
    expect([weight('line'), weight('thin')]).toEqual(['1.4', '0.8']);
  });
  it('a level line, and a single point, have no range of their own and are drawn all the same', () => {
    expect(pathsOf(drawn({ series: [line([1, 5], [2, 5])] }))).toEqual(['M52.0 96.0L708.0 96.0']);
    expect(dotsOf(drawn({ series: [{ kind: 'dots', points: [[1, 5]] }] }))).toEqual([[52, 96]]);
  });
});
