import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { plainRecording, type Recording } from './recording.js';
import { stamp } from './stamp.js';

const summer = Date.UTC(2027, 6, 2, 5, 4, 3, 250);
const written = (changes: Partial<Recording>) =>
  stamp(scene(plainScenario({ start: summer, samples: 10, recording: { ...plainRecording, ...changes } }), 1))(summer);

describe('stamp', () => {
  it('writes an instant as each logger would, in Lisbon in summer', () => {
    expect(written({})).toEqual(['2027-07-02T05:04:03Z']);
    expect(written({ clock: 'local' })).toEqual(['2027-07-02T06:04:03']);
    expect(written({ clock: 'offset' })).toEqual(['2027-07-02T06:04:03+01:00']);
    expect(written({ clock: 'day-first' })).toEqual(['02/07/2027 06:04:03']);
    expect(written({ clock: 'month-first' })).toEqual(['07/02/2027 06:04:03']);
    expect(written({ clock: 'unix-seconds', tick: 1 })).toEqual(['1814504643.250']);
    expect(written({ clock: 'unix-milliseconds' })).toEqual(['1814504643250']);
    expect(written({ tick: 1 })).toEqual(['2027-07-02T05:04:03.250Z']);
    expect(written({ clock: 'local', timeColumn: ['date', 'clock'] })).toEqual(['2027-07-02', '06:04:03']);
  });
});
