import { describe, expect, it } from 'vitest';
import { instantOf } from './instantOf.js';

describe('instantOf', () => {
  it.each([
    ['2027-03-02T09:00:00Z', 'Europe/Lisbon', '2027-03-02T09:00:00.000Z'],
    ['2027-03-02T09:00+01:00', 'Europe/Lisbon', '2027-03-02T08:00:00.000Z'],
    ['2027-03-02T09:00', 'UTC', '2027-03-02T09:00:00.000Z'],
    ['2027-07-02 09:00:30.5', 'Europe/Lisbon', '2027-07-02T08:00:30.500Z'],
    ['2027-10-31T01:30+01:00', 'Europe/Lisbon', '2027-10-31T00:30:00.000Z'],
    ['20270302T090030-0330', 'Europe/Lisbon', '2027-03-02T12:30:30.000Z'],
    ['2027-03-02t09z', 'Europe/Lisbon', '2027-03-02T09:00:00.000Z'],
    ['2027-03-02T09:00:00,9999Z', 'UTC', '2027-03-02T09:00:00.999Z'],
    ['2027-07-02T09:00+01:00[Europe/Lisbon]', 'UTC', '2027-07-02T08:00:00.000Z'],
  ])('%s in %s', (text, zone, iso) => expect(instantOf(text, zone)).toEqual({ instant: Date.parse(iso) }));

  it.each(['2027-03-28T01:30', '2027-10-31T01:30'])('%s is left out, or comes twice, in Lisbon', (text) =>
    expect(instantOf(text, 'Europe/Lisbon')).toEqual({ why: 'clock-change' }),
  );

  it.each([
    '',
    '2027-03-02',
    '09:00',
    '2.3.2027 09:00',
    '2027-13-02T09:00Z',
    '1803978000000',
    '2027-02-30T09:00Z',
    '2027-03-02T24:00Z',
    '2027-03-02T09:60Z',
    '2027-0302T09:00Z',
    '2027-03-02T09:00[Asia/Tokyo]',
  ])('cannot read "%s"', (text) => expect(instantOf(text, 'UTC')).toEqual({ why: 'unreadable' }));
});
