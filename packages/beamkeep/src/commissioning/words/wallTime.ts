/**
 * An instant as the clock in a zone shows it: "2027-01-20 10:05:07".
 *
 * @param iso ISO 8601; null gives "not known"
 * @param timeZone IANA zone that exists
 * @example wallTime('2027-07-01T10:00:00Z', 'Europe/Lisbon') // 2027-07-01 11:00:00
 */
export function wallTime(iso: string | null, timeZone: string): string {
  if (iso === null) return 'not known';
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  }).formatToParts(Date.parse(iso));
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((each) => each.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')} ${part('hour')}:${part('minute')}:${part('second')}`;
}
