import { describe, expect, it } from 'vitest';
import { aim } from '../../../../../../tests/commissioning/answers.js';
import { type Sign, signsOf } from '../../../../../../tests/commissioning/readPage.js';
import type { AimJson } from '../../answers/aimAnswer.js';
import { aimDrawing } from './aimDrawing.js';

const exact = (value: number) => ({ value, low: value, high: value });
const says = (markup: string) => signsOf(markup, 'text').map((text) => text.says);
const numbers = (sign: Sign | undefined, ...names: readonly (keyof Sign)[]) =>
  names.map((name) => Number(sign?.[name]));

describe('aimDrawing over one axis', () => {
  const { markup } = aimDrawing(aim);
  const curve = [...(signsOf(markup, 'path')[0]?.d ?? '').matchAll(/[ML](\S+) ([^ML]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  const dots = signsOf(markup, 'circle').map((dot) => numbers(dot, 'cx', 'cy'));

  it('names the beam and the axis', () => {
    expect(markup).toContain('Aim scan of beam B1: readings and fitted lobe');
    expect(says(markup)).toEqual(expect.arrayContaining(['pan [degrees]', 'received power']));
  });
  it('draws a dot a reading, evenly over the scan', () =>
    expect(dots.map(([x]) => x)).toEqual([52, 216, 380, 544, 708])); // -0.9 to 1.1 degrees
  it('draws the fitted lobe through them: symmetrical, its top at the peak', () => {
    expect(curve).toHaveLength(121);
    expect(curve[0]?.[0]).toBe(52);
    expect(curve.at(-1)?.[0]).toBe(708);
    expect(curve[60]).toEqual(dots[2]); // the highest reading is the fitted peak
    expect(curve[0]?.[1]).toBe(curve.at(-1)?.[1]);
    expect(Math.min(...curve.map(([, y]) => y as number))).toBe(curve[60]?.[1]);
  });
  it('the scale begins at nothing, however high the floor', () => {
    const high = { ...aim, fit: { ...aim.fit, floor: exact(60), peak: exact(40) } };
    const scan = { ...aim.scan, power: [70, 88, 100, 88, 70] };
    const texts = signsOf(aimDrawing({ ...high, scan }).markup, 'text');
    expect(texts.filter(({ 'text-anchor': anchor }) => anchor === 'end').map((text) => text.says)).toContain('0');
  });
  it('marks the peak, and where the head was left, each at its angle', () => {
    const at = (label: string) => Number(signsOf(markup, 'text').find((text) => text.says === label)?.x);
    expect(at('peak')).toBe(380);
    expect(at('left here')).toBe(412.8); // 0.1 degrees further, of 2 degrees in 656
  });
  it('marks what the scan is flagged for, where that has a place', () => {
    const flags: AimJson['flags'] = [
      { kind: 'second-peak', at: [1.1], size: 0.1, words: '' },
      { kind: 'few-points', size: 5, words: '' },
    ];
    const flagged = aimDrawing({ ...aim, left: null, flags }).markup;
    expect(says(flagged)).toContain('second peak');
    expect(says(flagged)).not.toContain('few points');
    expect(says(flagged)).not.toContain('left here');
  });
  it('leaves out a reading that is missing', () => {
    const scan = { angles: [[-0.9, null, 0.1, 0.6, 1.1]], power: [24, 70, 100, null, 24] };
    expect(signsOf(aimDrawing({ ...aim, scan }).markup, 'circle')).toHaveLength(3);
  });
  it('draws the lobe as far as the angles are known', () => {
    const scan = { angles: [[null, -0.4, 0.1, 0.6, 1.1]], power: [24, 70, 100, 70, 24] };
    const path = signsOf(aimDrawing({ ...aim, scan }).markup, 'path')[0]?.d ?? '';
    expect(path).toMatch(/^M52\.0 .*L708\.0 /);
    expect(path.match(/[ML]/g)).toHaveLength(121);
  });
});

describe('aimDrawing over two axes', () => {
  const places = [-1, 0, 1];
  const answer: AimJson = {
    ...aim,
    axes: ['pan', 'tilt'],
    fit: { ...aim.fit, centre: [exact(0.1), exact(-0.2)], halfAngle: [exact(0.7), exact(0.5)] },
    left: { ...aim.left, at: [0.5, 0.25], offset: [exact(0.4), exact(0.45)], loss: exact(3) },
    scan: {
      angles: [places.flatMap((x) => places.map(() => x)), places.flatMap(() => places)],
      power: [0, 20, 0, 30, 200, 50, -10, 100, 0],
    },
  };
  const { markup } = aimDrawing(answer);
  const dots = signsOf(markup, 'circle').slice(0, 9);

  it('is a map: pan to the right, tilt up, both on one scale', () => {
    // 2 degrees in 216, from 42 on.
    expect(dots.map((dot) => numbers(dot, 'cx', 'cy'))).toEqual([
      [42, 258],
      [42, 150],
      [42, 42],
      [150, 258],
      [150, 150],
      [150, 42],
      [258, 258],
      [258, 150],
      [258, 42],
    ]);
    expect(says(markup)).toEqual([
      '−1',
      '1',
      'pan [degrees]',
      'tilt [degrees]',
      'cross: peak; dashes: half power; ring: left here',
    ]);
    expect(signsOf(markup, 'rect')).toMatchObject([{ x: '42', y: '42', width: '216', height: '216' }]);
  });
  it('the more light came back the darker: black the most, white nothing', () =>
    expect(dots.map(({ fill }) => Number(fill?.match(/\d+/)?.[0]))).toEqual([
      255, 230, 255, 217, 0, 191, 255, 128, 255,
    ]));
  it('where the most is missing, the most of the others is black', () => {
    const power = [0, 20, 0, 30, null, 50, -10, 100, 0];
    const fills = signsOf(aimDrawing({ ...answer, left: null, scan: { ...answer.scan, power } }).markup, 'circle').map(
      ({ fill }) => Number(fill?.match(/\d+/)?.[0]),
    );
    expect(fills).toEqual([255, 204, 255, 179, 128, 255, 0, 255]);
  });
  it('its words lie within the picture, the ends of the scale below the frame', () => {
    const texts = signsOf(markup, 'text');
    for (const { x, y, transform } of texts)
      for (const place of transform?.match(/[\d.]+/g)?.slice(0, 2) ?? [x, y]) {
        expect(Number(place)).toBeGreaterThan(0);
        expect(Number(place)).toBeLessThan(300);
      }
    for (const end of texts.slice(0, 2)) expect(Number(end.y)).toBeGreaterThan(258);
  });
  it('a scan of one place draws that place', () => {
    const one = aimDrawing({ ...answer, scan: { angles: [[0.5], [0.5]], power: [40] } }).markup;
    expect(one).not.toMatch(/NaN|Infinity/);
    expect(numbers(signsOf(one, 'circle')[0], 'cx', 'cy')).toEqual([42, 258]);
  });
  it('the cross stands on the peak, the dashes a half-angle around it', () => {
    expect(markup).toContain('d="M160.8 171.6m');
    expect(numbers(signsOf(markup, 'ellipse')[0], 'cx', 'cy', 'rx', 'ry')).toEqual([160.8, 171.6, 75.6, 54]);
  });
  it('the ring stands where the head was left, and nowhere where nobody told', () => {
    expect(numbers(signsOf(markup, 'circle')[9], 'cx', 'cy')).toEqual([204, 123]);
    expect(signsOf(aimDrawing({ ...answer, left: null }).markup, 'circle')).toHaveLength(9);
  });
  it('leaves out a reading of which anything is missing', () => {
    const [pan = [], tilt = []] = answer.scan.angles;
    const without = (scan: AimJson['scan']) => signsOf(aimDrawing({ ...answer, left: null, scan }).markup, 'circle');
    expect(without({ ...answer.scan, power: [null, ...answer.scan.power.slice(1)] })).toHaveLength(8);
    expect(without({ ...answer.scan, angles: [pan, [null, ...tilt.slice(1)]] })).toHaveLength(8);
    expect(without({ ...answer.scan, angles: [[null, ...pan.slice(1)], tilt] })).toHaveLength(8);
  });
  it('says what it shows', () =>
    expect(markup).toContain(
      'aria-label="Aim scan of beam B1: readings over two axes, darker where more light came back"',
    ));
});

it('a scan without an axis draws nothing', () => expect(aimDrawing({ ...aim, axes: [] }).markup).toBe(''));
