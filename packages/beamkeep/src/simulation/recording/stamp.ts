import { day, hour, minute, second } from '../../columns/index.js';
import type { Scene } from '../scene.js';

const two = (value: number) => (value < 10 ? `0${value}` : `${value}`);

/** How this log's logger writes an instant: one text, or a date and a time of day. */
export function stamp({ scenario, clock }: Scene): (instant: number) => readonly string[] {
  const { recording } = scenario;
  const fine = recording.tick < second;
  let lastDay = Number.NaN;
  let date = '';
  const order = (() => {
    switch (recording.clock) {
      case 'day-first':
        return (y: number, m: number, d: number) => `${two(d)}/${two(m)}/${y}`;
      case 'month-first':
        return (y: number, m: number, d: number) => `${two(m)}/${two(d)}/${y}`;
      default:
        return (y: number, m: number, d: number) => `${y}-${two(m)}-${two(d)}`;
    }
  })();
  const joint = recording.clock === 'day-first' || recording.clock === 'month-first' ? ' ' : 'T';
  return (instant) => {
    if (recording.clock === 'unix-milliseconds') return [String(instant)];
    if (recording.clock === 'unix-seconds')
      return [fine ? (instant / second).toFixed(3) : String(Math.round(instant / second))];
    const shown = recording.clock === 'utc' ? instant : clock.wall(instant);
    const dayNumber = Math.floor(shown / day);
    if (dayNumber !== lastDay) {
      lastDay = dayNumber;
      const calendar = new Date(dayNumber * day);
      date = order(calendar.getUTCFullYear(), calendar.getUTCMonth() + 1, calendar.getUTCDate());
    }
    const rest = shown - dayNumber * day;
    const [h, m, s] = [Math.floor(rest / hour), Math.floor(rest / minute) % 60, Math.floor(rest / second) % 60];
    const clockTime = `${two(h)}:${two(m)}:${two(s)}${fine ? `.${String(Math.round(rest % second)).padStart(3, '0')}` : ''}`;
    const zone = recording.clock === 'utc' ? 'Z' : recording.clock === 'offset' ? offsetText(shown - instant) : '';
    if (typeof recording.timeColumn !== 'string') return [date, clockTime + zone];
    return [`${date}${joint}${clockTime}${zone}`];
  };
}

function offsetText(milliseconds: number): string {
  const minutes = Math.abs(Math.round(milliseconds / minute));
  return `${milliseconds < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
