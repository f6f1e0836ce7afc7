import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { readSamples } from './readSamples.js';

it('every usable sample, missing ones left out', async () => {
  const site = parseSite({
    format: 'beamkeep-site/1',
    beams: [{ id: 'B1', layout: 'end-to-end', separation: 62, cleanAir: 100 }],
  });
  const { beams } = await readSamples(
    logOfText('time,b1\n2027-01-04T00:00:00Z,100\n2027-01-04T00:01:00Z,\n2027-01-04T00:02:00Z,75\n'),
    site,
  );
  expect(beams[0]?.samples).toEqual({
    time: Float64Array.of(Date.UTC(2027, 0, 4), Date.UTC(2027, 0, 4, 0, 2)),
    level: Float64Array.of(1, 0.75),
  });
});
