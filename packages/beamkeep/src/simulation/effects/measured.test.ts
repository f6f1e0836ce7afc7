import { describe, expect, it } from 'vitest';
import { minute } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { curveLoss, measured } from './measured.js';

const curve = { seconds: [0, 10, 20, 30], perMetre: [1.003, 0.9, Number.NaN, 0.5] };

describe('curveLoss', () => {
  it('is the per-metre transmittance to the power of the length (Beer-Lambert)', () => {
    const loss = curveLoss(curve, 4);
    expect(10 ** (-loss(10) / 10)).toBeCloseTo(0.9 ** 4, 12);
    expect(10 ** (-loss(30) / 10)).toBeCloseTo(0.5 ** 4, 12);
  });

  it('caps drift above clean air, bridges missing samples and keeps the end', () => {
    const loss = curveLoss(curve, 4);
    expect(loss(0)).toBe(0);
    expect(loss(20)).toBeCloseTo((loss(10) + loss(30)) / 2, 12);
    expect(loss(99)).toBe(loss(30));
    expect(loss(-1)).toBe(0);
  });

  it('says what must change', () => {
    expect(() => curveLoss(curve, 0)).toThrow('0 m of smoke must be above 0');
    expect(() => curveLoss({ seconds: [0], perMetre: [Number.NaN] }, 1)).toThrow('holds no value');
  });
});

describe('measured', () => {
  it('lays a curve into a beam, holds it and clears it', () => {
    const set = scene(plainScenario({ samples: 1200, intervalSeconds: 10 }), 1);
    const from = set.scenario.start + 10 * minute;
    const loss =
      measured({ effect: 'measured', curve, from, metres: 4, held: 600, clears: 300 }, set).loss ?? new Float32Array();
    const full = -10 * Math.log10(0.5 ** 4);
    expect(loss[59]).toBe(0);
    expect(loss[63]).toBeCloseTo(full, 5);
    expect(loss[63 + 60]).toBeCloseTo(full, 5);
    expect(loss[63 + 90]).toBeCloseTo(full * Math.exp(-1), 5);
  });
});
