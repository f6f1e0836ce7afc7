import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { linearColumns } from './linearColumns.js';

it('passes proportional readings on as they are, and turns the others', () => {
  const beam = { layout: 'reflective', separation: 50 };
  const { beams } = parseSite({
    format: 'beamkeep-site/1',
    beams: [
      { ...beam, id: 'B1', signalColumn: 'a' },
      { ...beam, id: 'B2', signalColumn: 'b', signalUnit: 'obscuration' },
    ],
  });
  const columns = [Float64Array.of(100, 50), Float64Array.of(0, 25)];
  const linear = linearColumns(beams)(columns, 2);
  expect(linear[0]).toBe(columns[0]);
  expect(linear[1]).toEqual(Float64Array.of(1, 0.75));
});
