import type { ChangeJson, ResponseJson } from 'beamkeep';
import type { Site } from 'beamkeep/site';
import { caution } from './cautions.js';
import { inputText } from './inputText.js';
import type { Look } from './look.js';
import { counted, plural } from './numbers.js';
import { plain, plainly } from './plain.js';
import { table } from './table.js';
import { type Clock, clock, length } from './times.js';
import { wrap } from './wrap.js';

/** Changes of a beam that a table shows before it counts the rest. */
const shown = 60;

const weight = { fire: 'act', fault: 'watch', normal: 'faint' } as const;

function changeRows(changes: readonly ChangeJson[], told: Clock, { colours }: Look): string[][] {
  return changes.slice(0, shown).map(({ time, state }, at) => {
    const next = changes[at + 1];
    const lasted = next === undefined ? 'to the end of the log' : length(Date.parse(next.time) - Date.parse(time));
    return [told.wall(Date.parse(time), true), colours[weight[state]](state), lasted];
  });
}

function tally(changes: readonly ChangeJson[]): string {
  const entered = (state: ChangeJson['state']) => changes.filter((change) => change.state === state).length;
  return `fire: ${plural(entered('fire'), 'time')}, fault: ${plural(entered('fault'), 'time')}`;
}

/** What the equipment would have signalled, for people: a table of changes a beam. */
export function responseText(
  answer: ResponseJson,
  site: Pick<Site, 'name' | 'timeZone' | 'beams'>,
  look: Look,
): string {
  const { colours, width } = look;
  const told = clock(site.timeZone);
  const head = `What equipment with these thresholds and delays signals. Times in ${site.timeZone}.`;
  const { beams, input } = plainly(answer);
  const sections = beams.map(({ id, changes, assumed, notes = [] }, at) => {
    const latched = changes.at(-1)?.state === 'fire' && site.beams[at]?.latching === true;
    const rows = [['since', 'state', 'for'].map(colours.faint), ...changeRows(changes, told, look)];
    const rest = changes.length - shown;
    return [
      `${colours.strong(`Beam ${id}`)}  ${changes.length === 0 ? 'no usable samples' : tally(changes)}`,
      ...(changes.length === 0 ? [] : [table(rows, '  ')]),
      ...(rest > 0 ? [`  and ${counted(rest)} more changes: --json lists all`] : []),
      ...(latched ? ['  The fire signal is held until a visit whose work is "reset".'] : []),
      ...notes.map((note) => wrap(`Note: ${note}.`, width, '  ', '    ')),
      ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    ].join('\n');
  });
  return `${[
    `${colours.strong(plain(site.name))}\n${wrap(head, width)}`,
    ...sections,
    inputText(input, width),
    wrap(caution, width),
  ].join('\n\n')}\n`;
}
