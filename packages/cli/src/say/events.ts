import type { ClockJson, EventJson } from 'beamkeep';
import type { Look } from './look.js';
import { counted, figure, plural } from './numbers.js';
import { table } from './table.js';
import type { Clock } from './times.js';
import { unparted, wrap } from './wrap.js';

/** Events that the table shows before the rest is counted. */
const shown = 60;

/** Events that the log tells alike: told once. */
const kindOf = ({ beam, what, state, finding }: EventJson): string =>
  JSON.stringify([beam, what.toLowerCase(), state, finding?.cause]);

const weight = { fire: 'act', fault: 'watch', normal: 'faint' } as const;

/**
 * The panel's list beside the log, for people: how the two clocks stand, a table of the events, and what the log shows
 * at them, the same story told once.
 */
export function eventsText(clock: ClockJson, events: readonly EventJson[], told: Clock, look: Look): string {
  const { colours, width } = look;
  const rows = events
    .slice(0, shown)
    .map(({ at, beam, what, state, obscuration, finding }) => [
      told.wall(Date.parse(at), true),
      beam ?? 'all',
      wrap(what, 24),
      state === null ? 'no sample' : colours[weight[state]](state),
      obscuration === null ? '' : `${figure(obscuration)} %`,
      finding === null ? 'nothing near' : finding.cause,
    ]);
  const head = ["at, by the log's clock", 'beam', 'panel', 'settings give', 'obscuration', 'found'].map(colours.faint);
  const rest = events.length - rows.length;
  const stories = new Map<string, EventJson[]>();
  for (const event of events) {
    const own = stories.get(kindOf(event)) ?? [];
    own.push(event);
    stories.set(kindOf(event), own);
  }
  return [
    `${colours.strong("The panel's list")}  ${plural(events.length, 'event')}`,
    wrap(unparted(clock.words), width, '  ', '    '),
    '',
    table([head, ...rows], '  '),
    ...(rest > 0 ? [`  and ${counted(rest)} more: --json lists all`] : []),
    '',
    ...[...stories.values()].map((own) => story(own, told, width)),
  ].join('\n');
}

function story(events: readonly EventJson[], told: Clock, width: number): string {
  const [first] = events;
  if (first === undefined) return '';
  const last = events.at(-1) ?? first;
  const when =
    events.length === 1
      ? `on ${told.wall(Date.parse(first.at), true)}`
      : `${plural(events.length, 'time')}, ${told.day(Date.parse(first.at))} to ${told.day(Date.parse(last.at))}; the first`;
  const text = `${first.beam ?? 'all beams'}, ${first.what}, ${when}: ${first.words}`;
  return wrap(unparted(text), width, '  ', '    ');
}
