import { describe, expect, it } from 'vitest';
import { parseDay } from './day.js';

const base = { format: 'beamkeep-day/1', site: 'site.json', date: '2027-01-20', beams: [] };
const refused = (change: object) => () => parseDay({ ...base, ...change }, 'day.json');
const ofBeam = (change: object) => refused({ beams: [{ id: 'B1', ...change }] });

describe('parseDay', () => {
  it('takes a whole day as it is', () => {
    const told = [{ who: 'a', time: 'b' }];
    const whole = {
      ...base,
      people: [{ role: 'commissioner', name: 'I. Marsh' }],
      beams: [
        {
          id: 'B1',
          scan: 'scan.csv',
          left: [0.1, -0.2],
          angleUnit: 'milliradians',
          structure: { spanMetres: 18, roof: 'roofNoCeiling', heightMetres: 9, material: 'steel', depthMetres: 0.5 },
          covered: 'covered.csv',
          proof: { log: 'proof.csv', sheet: 'sheet.json' },
        },
      ],
      events: 'events.csv',
      clockOffsetSeconds: -140,
      log: ['log.csv'],
      impairment: {
        from: '09:30',
        told,
        fireWatch: { by: 'c', from: '09:30' },
        returned: { time: '13:10', by: 'd', told },
      },
      deviations: ['one'],
      notDone: ['two'],
      remarks: ['three'],
    };
    expect(parseDay(JSON.stringify(whole))).toEqual(whole);
  });
  it.each([
    [ofBeam({ scan: ' ' }), 'beams[0].scan is " ": give a text that is not empty'],
    [ofBeam({ left: [1, 2, 3] }), 'give one angle or two'],
    [ofBeam({ left: [Number.POSITIVE_INFINITY] }), 'give a number'],
    [ofBeam({ angleUnit: 'turns' }), 'beams[0].angleUnit is "turns": use "degrees", "milliradians", "millimetres"'],
    [ofBeam({ structure: { spanMetres: 0 } }), 'beams[0].structure.spanMetres is 0: give a number above 0'],
    [ofBeam({ structure: { depthMetres: Number.POSITIVE_INFINITY } }), 'give a number above 0'],
    [ofBeam({ structure: { material: 'wood' } }), 'beams[0].structure.material is "wood": use "steel"'],
    [ofBeam({ structure: { roof: 'tiles' } }), 'beams[0].structure.roof is "tiles": use "roofPlasterCeiling"'],
    [ofBeam({ proof: { sheet: 'a' } }), 'beams[0].proof.log is missing'],
    [refused({ people: [{ role: 'a', name: '' }] }), 'people[0].name is "": give a text that is not empty'],
    [refused({ impairment: { from: '' } }), 'impairment.from is "": give a text that is not empty'],
    [refused({ impairment: { from: 'a', told: [{ who: 'b' }] } }), 'impairment.told[0].time is missing'],
    [refused({ date: '2027-1-20' }), 'date is "2027-1-20": give a date as in 2027-01-20'],
    [refused({ remarks: [''] }), 'remarks[0] is "": give a text that is not empty'],
  ])('%# is refused, with its place', (act, says) => expect(act).toThrow(says));
});
