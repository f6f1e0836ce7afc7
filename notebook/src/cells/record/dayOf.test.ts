import { describe, expect, it } from 'vitest';
import { freshSettings } from '../../sheet/sheet.js';
import { dayOf } from './dayOf.js';

const fresh = freshSettings.record;

describe('dayOf', () => {
  it('fills nothing in', () => {
    const day = dayOf(fresh);
    expect(day).not.toHaveProperty('impairment');
    expect(day).toMatchObject({ date: '', people: [], deviations: [], notDone: [], remarks: [] });
  });

  it('takes what was written, a line each, and leaves out rows in which nothing is', () => {
    const day = dayOf({
      ...fresh,
      people: [
        { role: 'commissioning', name: 'I. ', licence: '' },
        { role: '', name: ' ', licence: '' },
      ],
      from: '2027-01-20T09:30',
      told: [{ who: 'monitoring', time: '2027-01-20T09:20' }],
      watch: { by: 'staff', from: '', until: '' },
      notDone: 'B4 was not proved\n\n the wall table ',
    });
    expect(day.people).toEqual([{ role: 'commissioning', name: 'I.' }]);
    expect(day.impairment).toEqual({
      from: '2027-01-20 09:30',
      told: [{ who: 'monitoring', time: '2027-01-20 09:20' }],
      fireWatch: { by: 'staff', from: '' },
    });
    expect(day.notDone).toEqual(['B4 was not proved', 'the wall table']);
  });

  it('somebody told that the system is back makes a return, even where its time is missing', () => {
    expect(dayOf({ ...fresh, toldBack: [{ who: 'monitoring', time: '' }] }).impairment?.returned).toEqual({
      time: '',
      by: '',
      told: [{ who: 'monitoring', time: '' }],
    });
  });
});
