import { describe, expect, it } from 'vitest';
import { assumedOf, bearsOnResponse } from './assumed.js';
import { parseSite } from './parseSite.js';

const written = { id: 'B1', layout: 'reflective', separation: 62 } as const;
const [beam] = parseSite({ beams: [written] }).beams;

describe('assumedOf', () => {
  it('names nothing that the site file says', () => {
    if (!beam) throw new Error('no beam');
    const all = { wavelength: 880, cleanAir: 100, covered: 0.4, alarmThreshold: 35, alarmDelay: 10 };
    expect(assumedOf({ ...written, ...all, faultThreshold: 90, faultDelay: 10 }, beam)).toEqual([]);
    expect(assumedOf({ ...written, ...all, faultThreshold: 90 }, beam)).toEqual(['faultDelay 10 s']);
  });
});

describe('bearsOnResponse', () => {
  it('leaves out the wavelength alone', () =>
    expect(beam?.assumed.filter((words) => !bearsOnResponse(words))).toEqual(['wavelength 880 nm']));
});
