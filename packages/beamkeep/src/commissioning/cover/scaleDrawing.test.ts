import { describe, expect, it } from 'vitest';
import { signsOf } from '../../../../../tests/commissioning/readPage.js';
import { type CoverMark, scaleDrawing } from './scaleDrawing.js';

/* In millimetres: 8 of margin, the strip from 12 to 38 down. */

const square = { shape: 'rectangle', width: 100 } as const;
const every = (step: number, size = 100): CoverMark[] =>
  Array.from({ length: 100 / step - 1 }, (_, at) => ({
    obscuration: step * (at + 1),
    millimetres: (size * step * (at + 1)) / 100,
  }));
const drawn = (...args: Partial<Parameters<typeof scaleDrawing>>) => {
  const [reflector = square, way = 'edge', marks = every(10), lit = false] = args;
  return scaleDrawing(reflector, way, marks, lit).markup;
};
const linesOf = (markup: string) => signsOf(markup, 'line').map(({ x1, x2, y1, y2 }) => [x1, x2, y1, y2].map(Number));
/** Numbers at the marks, with their places. */
const labelsOf = (markup: string) =>
  signsOf(markup, 'text').flatMap(({ says, transform, 'font-size': size }) =>
    transform ? [[says, Number(transform.match(/translate\((\S+) /)?.[1]) - 1 - 8, Number(size)]] : [],
  );
const labels = (markup: string) => labelsOf(markup).map(([says]) => says);
const words = (markup: string) => signsOf(markup, 'text').map(({ says }) => says);

describe('scaleDrawing', () => {
  it('is a strip as wide as the reflector, on a sheet wide enough for its words', () => {
    const [, strip] = signsOf(drawn(), 'rect');
    expect(strip).toMatchObject({ x: '8', y: '12', width: '100.00', height: '26' });
    expect(drawn()).toContain('width="166.00mm" height="64.00mm" viewBox="0 0 166.00 64.00"');
    expect(drawn({ shape: 'rectangle', width: 180 })).toContain('width="196.00mm"');
    expect(signsOf(drawn({ shape: 'round', diameter: 80 }), 'rect')[1]?.width).toBe('80.00');
  });
  it('a mark stands as far from the edge as the cover must reach', () => {
    const marks = [{ obscuration: 30, millimetres: 31.5 }];
    expect(linesOf(drawn(square, 'edge', marks))[0]).toEqual([39.5, 39.5, 12, 26]);
    expect(labelsOf(drawn(square, 'edge', marks))).toEqual([['30', 31.5, 3.2]]);
  });
  it('from the middle it stands on both sides, its number on one, the middle marked', () => {
    const markup = drawn(square, 'middle', [{ obscuration: 30, millimetres: 20 }]);
    const [left, right, middle] = linesOf(markup);
    expect([left?.[0], right?.[0]]).toEqual([48, 68]); // 40 and 60 of 100
    expect(labelsOf(markup)).toEqual([['30', 60, 3.2]]);
    expect(middle).toEqual([58, 58, 12, 38]);
    expect(linesOf(drawn(square, 'edge', [{ obscuration: 30, millimetres: 20 }]))).not.toContainEqual([58, 58, 12, 38]);
  });
  it('tens are long, others short and their numbers smaller', () => {
    const markup = drawn(square, 'edge', [
      { obscuration: 30, millimetres: 30 },
      { obscuration: 35, millimetres: 35 },
    ]);
    expect(
      linesOf(markup)
        .slice(0, 2)
        .map(([, , from, to]) => (to as number) - (from as number)),
    ).toEqual([14, 8]);
    expect(labelsOf(markup).map(([, , size]) => size)).toEqual([3.2, 2.4]);
  });
  it('numbers every mark of a few, and only the tens of many', () => {
    expect(labels(drawn(square, 'edge', every(5).slice(0, 11)))).toHaveLength(11);
    expect(labels(drawn(square, 'edge', every(5)))).toEqual(['10', '20', '30', '40', '50', '60', '70', '80', '90']);
  });
  it('no number stands upon another: 3.4 mm apart at least', () => {
    const close = [0, 3.3, 3.4, 6.8].map((millimetres, at) => ({ obscuration: 10 * (at + 1), millimetres }));
    expect(labels(drawn(square, 'edge', close))).toEqual(['10', '30', '40']);
    expect(linesOf(drawn(square, 'edge', close)).slice(0, 4)).toHaveLength(4);
  });
  it('the bar that proves the print is 50 mm between its ends', () => {
    const [bar, left, right] = linesOf(drawn()).slice(-3);
    expect(bar).toEqual([8, 58, 46, 46]);
    expect(left).toEqual([8, 8, 44, 48]);
    expect(right).toEqual([58, 58, 44, 48]);
    expect(words(drawn())).toContain('This bar is 50 mm when printed at 100 %. If it is not, the scale is wrong.');
  });
  it('says for which reflector it is, how it is lit and from where the cover comes', () => {
    expect(words(drawn())[0]).toBe(
      'Cover scale, % obscuration: reflector 100 mm wide, evenly lit, cover from the left edge',
    );
    expect(drawn({ shape: 'round', diameter: 80 }, 'middle', every(10, 80), true)).toContain(
      'aria-label="Cover scale, round reflector, 80 mm, lit by the lobe, cover from the middle"',
    );
  });
});
