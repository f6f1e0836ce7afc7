import { describe, expect, it } from 'vitest';
import { heatPoints } from './heatPoints.js';

describe('heatPoints', () => {
  it('reads a line a point, with a head or without, whatever stands between', () => {
    const points = [
      [0, 0],
      [60, 200.5],
    ];
    expect(heatPoints('time_s,heat_kw\n0,0\n60,200.5\n', 'burn.csv')).toEqual(points);
    expect(heatPoints('\uFEFF0;0\r\n\r\n60;200.5', 'burn.csv')).toEqual(points);
    expect(heatPoints('0\t0\n60  200.5', 'burn.csv')).toEqual(points);
    expect(heatPoints('', 'burn.csv')).toEqual([]);
  });
  it('names the line that is wrong', () => {
    expect(() => heatPoints('time,heat\n0,0\n60,many', 'burn.csv')).toThrow(
      'burn.csv:3: "60,many" is not two numbers, seconds and kW',
    );
    expect(() => heatPoints('time,heat\nseconds,kW\n0,0', 'burn.csv')).toThrow('burn.csv:2');
  });
});
