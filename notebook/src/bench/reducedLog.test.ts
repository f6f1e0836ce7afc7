import { describe, expect, it } from 'vitest';
import { reducedLog } from './reducedLog.js';

describe('reducedLog', () => {
  it('has a line a row, in percent of clean air and UTC, and no cell is a formula', () => {
    const trace = {
      time: Float64Array.of(0, 60_000),
      until: Float64Array.of(59_000, 60_000),
      level: Float64Array.of(0.99, 0.5),
      low: Float32Array.of(0.98, 0.5),
      high: Float32Array.of(1, 0.5),
      spread: Float32Array.of(0.001, 0),
      count: Uint32Array.of(60, 1),
    };
    const text = [...reducedLog([{ id: '=B1', trace, intervalSeconds: 1, quantum: 0, assumed: [] }])].join('');
    expect(text.split('\r\n')).toEqual([
      'beam,from,to,samples,level %,low %,high %,spread %',
      "'=B1,1970-01-01T00:00:00.000Z,1970-01-01T00:00:59.000Z,60,99.000,98.000,100.000,0.100",
      "'=B1,1970-01-01T00:01:00.000Z,1970-01-01T00:01:00.000Z,1,50.000,50.000,50.000,0.000",
      '',
    ]);
  });
});
