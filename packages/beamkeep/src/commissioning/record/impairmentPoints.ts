import type { CommissioningRecord, PointOut } from './commissioningRecord.js';

/*
 * What is missing in the story of the impairment, and what in it does not fit together. Times are kept as people wrote
 * them; they are compared only where both are a date and a time on the clock of the site, without an offset.
 */

type Impairment = CommissioningRecord['impairment'];

/** What a complete story of the impairment would tell and this one does not. */
export function impairmentMissing(impairment: Impairment): (string | false)[] {
  if (impairment === null) return ['the impairment: from when to when the system was out of service, and who was told'];
  const { from, until, told, fireWatch, returned } = impairment;
  return [
    from === '' && 'from when the system was out of service',
    told.length === 0 && 'who was told that the system was out of service',
    told.some(({ who, time }) => who === '' || time === '') && 'who was told of the impairment, and when, in full',
    until === null && 'until when the system was out of service',
    fireWatch === null && 'whether a fire watch was kept',
    fireWatch !== null && fireWatch.by === '' && 'who kept the fire watch',
    fireWatch !== null &&
      (fireWatch.from === '' || fireWatch.until === null) &&
      'from when to when a fire watch was kept',
    returned === null && 'the return to service',
    returned !== null &&
      (returned.time === '' || returned.by === '') &&
      'when and by whom the system was returned to service',
    returned !== null && returned.told.length === 0 && 'who was told that the system is back in service',
  ];
}

/** What in the story of the impairment does not fit together. */
export function impairmentAttention({ impairment }: Pick<CommissioningRecord, 'impairment'>): PointOut[] {
  if (impairment === null) return [];
  const { from, until, told, fireWatch, returned } = impairment;
  const end = until ?? '';
  const words = [
    earlier(end, from) && `impairment: it ends at ${end}, before it begins at ${from}.`,
    ...told.map(
      ({ who, time }) =>
        earlier(from, time) &&
        `impairment: ${who} was told at ${time}, and the system was out of service from ${from} on.`,
    ),
    fireWatch &&
      earlier(from, fireWatch.from) &&
      `fire watch: it began at ${fireWatch.from}, and the system was out of service from ${from} on.`,
    fireWatch?.until != null &&
      earlier(fireWatch.until, end) &&
      `fire watch: it ended at ${fireWatch.until}, and the system was out of service until ${end}.`,
    returned &&
      earlier(returned.time, from) &&
      `return to service: ${returned.time} lies before the impairment began at ${from}.`,
  ];
  return words.filter((each) => typeof each === 'string').map((each) => ({ beam: null, words: each }));
}

const onSiteClock = /^\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(:\d{2})?$/;

/** Whether a time lies before another; false where they cannot be compared. */
const earlier = (time: string, other: string): boolean =>
  onSiteClock.test(time) && onSiteClock.test(other) && time.replace('T', ' ') < other.replace('T', ' ');
