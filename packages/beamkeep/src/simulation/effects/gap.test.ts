import { describe, expect, it } from 'vitest';
import { hour } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { simulate } from '../simulate.js';

const start = plainScenario().start;
const stretches = [{ from: start + 2 * hour, to: start + 3 * hour }];
const log = (how: 'lines' | 'cells' | 'stuck') =>
  simulate(plainScenario({ samples: 600 }, { effects: [{ effect: 'gap', how, stretches }] }), 1);

describe('gap', () => {
  it('leaves out whole lines', () => {
    expect([...log('lines').lines()].length).toBe(1 + 600 - 61);
  });

  it('leaves out cells', () => {
    const lines = [...log('cells').lines()];
    expect(lines.length).toBe(601);
    expect(lines.filter((line) => line.endsWith(',\n')).length).toBe(61);
  });

  it('holds the value before', () => {
    const [beam] = log('stuck').beams;
    const held = beam?.reading.subarray(119, 181) ?? new Float64Array();
    expect(new Set(held).size).toBe(1);
    expect(new Set(beam?.reading.subarray(181, 240)).size).toBeGreaterThan(5);
  });
});
