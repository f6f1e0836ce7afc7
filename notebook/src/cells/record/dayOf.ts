import type { CommissioningDay } from 'beamkeep/commissioning';
import type { Settings } from '../../sheet/sheet.js';

type Written = Settings['record'];

/** A field's date and time as a record has it: "2027-01-20 09:30". */
const moment = (typed: string): string => typed.trim().replace('T', ' ');

/** Whether a person wrote anything into a row. */
const anything = (row: Readonly<Record<string, string>>): boolean =>
  Object.values(row).some((text) => text.trim() !== '');

const lines = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

const told = (rows: Written['told']) =>
  rows.filter(anything).map(({ who, time }) => ({ who: who.trim(), time: moment(time) }));

/**
 * What people wrote into a record cell, as a commissioning day. What they left empty stays empty or is left out, so
 * that the record shows it as missing.
 */
export function dayOf(written: Written): CommissioningDay {
  const { from, until, watch, returned, returnedBy } = written;
  const [outTold, backTold] = [told(written.told), told(written.toldBack)];
  const watched = anything(watch);
  const back = returned.trim() !== '' || returnedBy.trim() !== '' || backTold.length > 0;
  const impaired = from !== '' || until !== '' || outTold.length > 0 || watched || back;
  return {
    format: 'beamkeep-day/1',
    site: 'the site of the sheet',
    date: written.date,
    beams: [],
    people: written.people.filter(anything).map(({ role, name, licence }) => ({
      role: role.trim(),
      name: name.trim(),
      ...(licence.trim() === '' ? {} : { licence: licence.trim() }),
    })),
    ...(impaired && {
      impairment: {
        from: moment(from),
        ...(until !== '' && { until: moment(until) }),
        told: outTold,
        ...(watched && {
          fireWatch: {
            by: watch.by.trim(),
            from: moment(watch.from),
            ...(watch.until !== '' && { until: moment(watch.until) }),
          },
        }),
        ...(back && { returned: { time: moment(returned), by: returnedBy.trim(), told: backTold } }),
      },
    }),
    deviations: lines(written.deviations),
    notDone: lines(written.notDone),
    remarks: lines(written.remarks),
  };
}
