import type { CommissioningDay } from 'beamkeep/commissioning';
import { type Cell, freshCell, freshSettings, type Settings, type SmallText } from '../../sheet/sheet.js';
import { typedOf } from '../aim/structureTyped.js';

/** A commissioning day as cells: the tests of its beams, and what people wrote down. */
export interface DayCells {
  readonly tests: readonly Cell[];
  readonly written: Settings['record'];
}

/** A time as a field takes it: "2027-01-20T09:30". */
const typed = (time = ''): string => time.replace(' ', 'T');

const tellings = (told: readonly { readonly who: string; readonly time: string }[] = []): Settings['record']['told'] =>
  told.map(({ who, time }) => ({ who, time: typed(time) }));

/**
 * A commissioning day as cells of a sheet.
 *
 * @param day the day file
 * @param file gives a file that the day names
 */
export async function dayCells(day: CommissioningDay, file: (name: string) => Promise<SmallText>): Promise<DayCells> {
  const given = async (name: string | undefined): Promise<SmallText | null> =>
    name === undefined ? null : await file(name);
  const tests: Cell[] = [];
  for (const { id: beam, scan, left = [], structure } of day.beams)
    if (scan !== undefined)
      tests.push(
        freshCell('aim', { beam, scan: await file(scan), left: left.join(' '), structure: typedOf(structure) }),
      );
  for (const { id: beam, covered } of day.beams)
    if (covered !== undefined) tests.push(freshCell('covered', { beam, test: await file(covered) }));
  for (const { id: beam, proof } of day.beams)
    if (proof)
      tests.push(
        freshCell('proof', {
          ...freshSettings.proof,
          beam,
          sheet: await given(proof.sheet),
          test: await file(proof.log),
          events: await given(day.events),
          clockOffset: String(day.clockOffsetSeconds ?? ''),
        }),
      );
  const { impairment, people = [], deviations = [], notDone = [], remarks = [] } = day;
  const { fireWatch: watch, returned } = impairment ?? {};
  return {
    tests,
    written: {
      date: day.date,
      people: people.map(({ role, name, licence = '' }) => ({ role, name, licence })),
      from: typed(impairment?.from),
      until: typed(impairment?.until),
      told: tellings(impairment?.told),
      watch: { by: watch?.by ?? '', from: typed(watch?.from), until: typed(watch?.until) },
      returned: typed(returned?.time),
      returnedBy: returned?.by ?? '',
      toldBack: tellings(returned?.told),
      deviations: deviations.join('\n'),
      notDone: notDone.join('\n'),
      remarks: remarks.join('\n'),
    },
  };
}
