import { describe, expect, it } from 'vitest';
import type { CommissioningRecord } from './commissioningRecord.js';
import { impairmentAttention, impairmentMissing } from './impairmentPoints.js';

type Impairment = NonNullable<CommissioningRecord['impairment']>;

const whole: Impairment = {
  from: '2027-01-20 09:30',
  until: '2027-01-20 13:10',
  told: [{ who: 'monitoring', time: '2027-01-20 09:20' }],
  fireWatch: { by: 'staff', from: '2027-01-20T09:30', until: '2027-01-20T13:10' },
  returned: { time: '2027-01-20 13:10', by: 'I.', told: [{ who: 'monitoring', time: '2027-01-20 13:12' }] },
};
const attention = (change: Partial<Impairment>): string[] =>
  impairmentAttention({ impairment: { ...whole, ...change } }).map(({ words }) => words);
const missing = (impairment: Impairment | null): string[] =>
  impairmentMissing(impairment).filter((words) => words !== false);

describe('impairmentPoints', () => {
  it('a whole story has no gap and nothing that does not fit', () => {
    expect(missing(whole)).toEqual([]);
    expect(attention({})).toEqual([]);
  });

  it('tells what was not written down', () => {
    expect(missing(null)).toHaveLength(1);
    expect(missing({ from: '', until: null, told: [], fireWatch: null, returned: null })).toEqual([
      'from when the system was out of service',
      'who was told that the system was out of service',
      'until when the system was out of service',
      'whether a fire watch was kept',
      'the return to service',
    ]);
    expect(
      missing({
        ...whole,
        told: [{ who: 'monitoring', time: '' }],
        fireWatch: { by: '', from: '', until: null },
        returned: { time: '', by: '', told: [] },
      }),
    ).toHaveLength(5);
  });

  it('tells what came too late or ended too soon', () => {
    expect(attention({ until: '2027-01-20 09:00' })[0]).toMatch(/ends at 2027-01-20 09:00, before it begins/);
    expect(attention({ told: [{ who: 'monitoring', time: '2027-01-20 10:00' }] })).toEqual([
      'impairment: monitoring was told at 2027-01-20 10:00, and the system was out of service from 2027-01-20 09:30 on.',
    ]);
    expect(attention({ fireWatch: { by: 'staff', from: '2027-01-20 10:00', until: '2027-01-20 12:00' } })).toHaveLength(
      2,
    );
    expect(attention({ returned: { time: '2027-01-20 08:00', by: 'I.', told: [] } })).toHaveLength(1);
  });

  it('compares no times but those on the clock of the site', () => {
    expect(attention({ told: [{ who: 'monitoring', time: 'in the morning' }] })).toEqual([]);
    expect(attention({ told: [{ who: 'monitoring', time: '2027-01-20T10:00Z' }] })).toEqual([]);
  });
});
