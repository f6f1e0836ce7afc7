import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { wantedColumns } from './wantedColumns.js';

it('signals in order of the beams, then what is logged beside them, each once', () => {
  const beam = { layout: 'reflective', separation: 50, temperatureColumn: 't' };
  const site = parseSite({
    format: 'beamkeep-site/1',
    beams: [
      { ...beam, id: 'B1', signalColumn: 'x', gainColumn: 'g' },
      { ...beam, id: 'B2', signalColumn: 'y' },
    ],
  });
  expect(wantedColumns(site)).toEqual([
    { name: 'x', by: 'beams[0] signalColumn' },
    { name: 'y', by: 'beams[1] signalColumn' },
    { name: 't', by: 'beams[0] temperatureColumn' },
    { name: 'g', by: 'beams[0] gainColumn' },
  ]);
});
