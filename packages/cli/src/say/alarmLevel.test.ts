import { apparentObscuration } from 'beamkeep/attenuation';
import { type Beam, parseSite } from 'beamkeep/site';
import { describe, expect, it } from 'vitest';
import { alarmLevel } from './alarmLevel.js';

const beam = (told: object): Beam => {
  const { beams } = parseSite({
    format: 'beamkeep-site/1',
    beams: [{ id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1', ...told }],
  });
  return beams[0] as Beam;
};

describe('alarmLevel', () => {
  it('is what the threshold leaves, where nothing comes back from a covered reflector', () => {
    expect(alarmLevel(beam({}))).toBeCloseTo(0.65, 12);
    expect(alarmLevel(beam({ covered: 4, coveredSubtracted: true }))).toBeCloseTo(0.65, 12);
  });
  it('lies deeper where the equipment counts light that does not come by the beam', () => {
    const level = alarmLevel(beam({ covered: 20 }));
    expect(level).toBeCloseTo(0.5625, 12);
    expect(apparentObscuration(100 * (1 - level), 100, 20)).toBeCloseTo(35, 9);
  });
  it('is beyond reach where the covered reading alone keeps the alarm away', () => {
    expect(alarmLevel(beam({ covered: 70 }))).toBeLessThan(0);
  });
});
