const minute = 60_000;
const day = 24 * 60 * minute;

/** Tells instants in one time zone. */
export interface Clock {
  readonly zone: string;
  /** The day: "2027-01-09". */
  day(instant: number): string;
  /** The day and the minute, or second where asked: "2027-01-09 08:40". A clock time that comes twice names its offset. */
  wall(instant: number, seconds?: boolean): string;
  /** Milliseconds since the clock last showed midnight, as the clock shows them. */
  sinceMidnight(instant: number): number;
}

/** @param zone IANA zone that exists */
export function clock(zone: string): Clock {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
    timeZoneName: 'longOffset',
  });
  const parts = (instant: number) => {
    const all = new Map(format.formatToParts(instant).map(({ type, value }) => [type, value]));
    const part = (type: Intl.DateTimeFormatPartTypes) => all.get(type) ?? '';
    return {
      day: `${part('year')}-${part('month')}-${part('day')}`,
      time: `${part('hour')}:${part('minute')}:${part('second')}`,
      offset: part('timeZoneName').replace(/^GMT$/, 'GMT+00:00').replace('GMT', 'UTC'),
    };
  };
  const comesTwice = (instant: number, told: string): boolean =>
    [-60, -30, 30, 60].some((shift) => {
      const other = parts(instant + shift * minute);
      return `${other.day} ${other.time}` === told;
    });
  return {
    zone,
    day: (instant) => parts(instant).day,
    wall: (instant, seconds = false) => {
      const { day, time, offset } = parts(instant);
      const shown = `${day} ${seconds ? time : time.slice(0, 5)}`;
      return comesTwice(instant, `${day} ${time}`) ? `${shown} (${offset})` : shown;
    },
    sinceMidnight: (instant) => {
      const [hours = 0, minutes = 0, seconds = 0] = parts(instant).time.split(':').map(Number);
      return ((hours * 60 + minutes) * 60 + seconds) * 1000;
    },
  };
}

/** Whether seconds matter in telling this stretch. */
const needsSeconds = (start: number, end: number): boolean =>
  end - start < 10 * minute && (start % minute !== 0 || end % minute !== 0);

/** A stretch in words: days for long ones, minutes or seconds for short ones, "since" for what has not ended. */
export function stretch(told: Clock, start: number, end: number, ongoing = false): string {
  const long = end - start >= 3 * day;
  const seconds = needsSeconds(start, end);
  const from = told.wall(start, seconds);
  if (ongoing) return `since ${long ? told.day(start) : from}`;
  if (end === start) return from;
  if (long) return `${told.day(start)} to ${told.day(end)}`;
  const to = told.wall(end, seconds);
  return `${from} to ${told.day(start) === told.day(end) ? to.slice(11) : to}`;
}

/** How long, in the two largest units: "3 d 4 h", "12 min", "40 s". */
export function length(milliseconds: number): string {
  const total = Math.round(milliseconds / 1000);
  const parts: readonly (readonly [number, string])[] = [
    [Math.floor(total / 86_400), 'd'],
    [Math.floor(total / 3600) % 24, 'h'],
    [Math.floor(total / 60) % 60, 'min'],
    [total % 60, 's'],
  ];
  const first = parts.findIndex(([value]) => value > 0);
  if (first < 0) return '0 s';
  return parts
    .slice(first, first + 2)
    .filter(([value]) => value > 0)
    .map(([value, unit]) => `${value} ${unit}`)
    .join(' ');
}
