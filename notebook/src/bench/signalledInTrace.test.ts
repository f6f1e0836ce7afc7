import { parseSite } from 'beamkeep/site';
import { describe, expect, it } from 'vitest';
import { signalledInTrace } from './signalledInTrace.js';
import { testTrace } from './testTrace.js';

const { beams } = parseSite({
  format: 'beamkeep-site/1',
  beams: [{ id: 'a', layout: 'reflective', separation: 40, signalUnit: 'counts', covered: 0 }],
});
const [beam] = beams;
if (!beam) throw new Error('no beam');
const trace = testTrace([0, 10_000, 20_000, 30_000, 40_000, 50_000], [1, 0.9, 0.6, 0.5, 0.5, 1]);
const record = { id: 'a', trace, intervalSeconds: 10, quantum: 0, cleanAir: 2100, assumed: [] };

describe('signalledInTrace', () => {
  it('gives the stretches of fire, by the clean-air reading that the log told', () =>
    expect(signalledInTrace(beam, record, [], 'regular')).toEqual([
      { id: 'a', stretches: [{ state: 'fire', start: 30_000, end: 50_000 }], notes: [] },
    ]));
  it('ends it at a reset', () =>
    expect(
      signalledInTrace({ ...beam, latching: true }, record, [{ time: 50_000, work: 'reset' }], 'regular')[0]?.stretches,
    ).toEqual([{ state: 'fire', start: 30_000, end: 50_000 }]));
  it('is nothing of a beam that was not read', () =>
    expect(signalledInTrace(beam, undefined, [], 'regular')).toEqual([]));
});
