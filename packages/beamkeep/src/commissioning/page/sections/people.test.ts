import { describe, expect, it } from 'vitest';
import { gathered } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import { peopleSection } from './people.js';

type Log = NonNullable<Parameters<typeof gathered>[3]>['log'];
const shown = (day: object, log: Log = null) => peopleSection(gathered(undefined, undefined, day, { log })).markup;
const missing = (text: string) => `<span class="missing">${text}</span>`;

const impairment = {
  from: '09:30',
  until: '13:10',
  told: [{ who: 'monitoring', time: '09:20' }],
  fireWatch: { by: 'staff', from: '09:30', until: '13:00' },
  returned: { time: '13:12', by: 'I. Marsh', told: [{ who: 'the owner', time: '13:15' }] },
};

describe('peopleSection', () => {
  it('tells the whole story of a day', () => {
    const markup = shown({ people: [{ role: 'commissioner', name: 'I. Marsh', licence: 'L-1' }], impairment });
    expect(cellsOf(markup)).toEqual([
      ['commissioner', 'I. Marsh', 'L-1'],
      ['out of service from', '09:30'],
      ['until', '13:10'],
      ['fire watch', 'staff, 09:30 to 13:00'],
      ['returned to service', '13:12, I. Marsh'],
    ]);
    expect(itemsOf(markup)).toEqual(['monitoring, 09:20', 'the owner, 13:15']);
    expect(markup).not.toContain(missing('not written down'));
  });
  it('shows each gap in its place', () => {
    const markup = shown({
      people: [{ role: '', name: 'I. Marsh' }],
      impairment: { from: '09:30', fireWatch: { by: 'staff', from: '09:30' } },
    });
    expect(cellsOf(markup)).toEqual([
      ['not written down', 'I. Marsh', 'not given'],
      ['out of service from', '09:30'],
      ['until', 'not written down'],
      ['fire watch', 'staff, 09:30 to an end not written down'],
      ['returned to service', 'not written down'],
    ]);
    expect(textOf(markup)).toContain('Told that the system was out of service nobody written down');
    expect(textOf(markup)).toContain('Told that it is back in service not written down');
  });
  it('no fire watch, and a return of which nobody was told', () => {
    const markup = shown({ impairment: { from: '09:30', returned: { time: '13:12', by: 'I. Marsh' } } });
    expect(cellsOf(markup)).toContainEqual(['fire watch', 'not written down']);
    expect(textOf(markup)).toContain('Told that it is back in service nobody written down');
  });
  it('where nothing was written down, says what had to be', () => {
    const markup = shown({});
    expect(markup).toContain(missing('nobody written down'));
    expect(markup).toContain(missing('nothing written down: when the system was out of service, and who was told'));
    expect(markup).toContain(missing('no log'));
    expect(cellsOf(markup)).toEqual([]);
  });
  it('the log kept with the record: from when to when by the clock of the site, and what was dropped', () => {
    const log = { from: '2027-07-01T10:00:00Z', to: '2027-07-02T10:00:00Z', lines: 1440, dropped: 0 };
    expect(textOf(shown({}, log))).toContain(
      'From 2027-07-01 11:00:00 to 2027-07-02 11:00:00: 1440 lines, none dropped.',
    );
    expect(textOf(shown({}, { ...log, dropped: 3 }))).toContain('1440 lines, 3 dropped.');
  });
});
