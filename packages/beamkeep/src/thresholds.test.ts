import { describe, expect, it } from 'vitest';
import { depot } from '../../../tests/commissioning/demo.js';
import { parseSite } from './site/index.js';
import { thresholds } from './thresholds.js';

/* Asked of the demonstration files of the commissioning day, whose truth is known: see their README. */

describe('thresholds', () => {
  it('says every unit over the true path, what standards ask, the table and the dirt', async () => {
    const { format, beams } = thresholds(await depot(), { beam: 'B1' });
    expect(format).toBe('beamkeep-thresholds/1');
    const [beam] = beams;
    expect(beam?.alarm.path).toBe(124);
    expect(beam?.alarm.units['decibels-per-metre']).toBeCloseTo(1.870866 / 124, 6);
    expect(beam?.table.rows.map(({ separation }) => separation)).toEqual([20, 30, 40, 50, 60, 70, 80, 90, 100]);
    expect(beam?.dirt.find(({ dirt }) => dirt === 20)?.smoke).toBeCloseTo(18.75, 10);
    expect(beam?.compensationBound.percent).toBeCloseTo(49.8, 1);
    expect(beam?.assumed).toEqual(['wavelength 880 nm']);
  });
  it('writes a threshold of all as infinite', () => {
    const beam = { id: 'B1', layout: 'reflective', separation: 62, faultThreshold: 100 };
    expect(thresholds(parseSite({ beams: [beam] })).beams[0]?.fault.units.decibels).toBe('infinite');
  });
});
