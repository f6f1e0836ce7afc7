import type { Site } from 'beamkeep/site';
import type { Response, ToldChange } from '../answers.js';
import { caution } from './cautions.js';
import type { Look } from './look.js';
import { counted, plural } from './numbers.js';
import { plain, plainly } from './plain.js';
import { table } from './table.js';
import { type Clock, clock, length } from './times.js';
import { wrap } from './wrap.js';

/** Changes of a beam that a table shows before it counts the rest. */
const shown = 60;

const weight = { fire: 'act', fault: 'watch', normal: 'faint' } as const;

function changeRows(changes: readonly ToldChange[], told: Clock, { colours }: Look): string[][] {
  return changes.slice(0, shown).map(({ time, state }, at) => {
    const next = changes[at + 1];
    const lasted = next === undefined ? 'to the end of the log' : length(Date.parse(next.time) - Date.parse(time));
    return [told.wall(Date.parse(time), true), colours[weight[state]](state), lasted];
  });
}

function tally(changes: readonly ToldChange[]): string {
  const entered = (state: ToldChange['state']) => changes.filter((change) => change.state === state).length;
  return `fire ${plural(entered('fire'), 'time')}, fault ${plural(entered('fault'), 'time')}`;
}

/** What the equipment would have signalled, for people: a table of changes a beam. */
export function responseText(answer: Response, site: Pick<Site, 'name' | 'timeZone'>, look: Look): string {
  const { colours, width } = look;
  const told = clock(site.timeZone);
  const beams = plainly(answer).beams.map(({ id, changes, assumed }) => {
    const rows = [['since', 'state', 'for'].map(colours.faint), ...changeRows(changes, told, look)];
    const rest = changes.length - shown;
    return [
      `${colours.strong(`Beam ${id}`)}  ${changes.length === 0 ? 'no usable samples' : tally(changes)}`,
      ...(changes.length === 0 ? [] : [table(rows, '  ')]),
      ...(rest > 0 ? [`  and ${counted(rest)} more changes: --json lists all`] : []),
      ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    ].join('\n');
  });
  return `${[
    `${colours.strong(plain(site.name))}\nWhat equipment with these thresholds and delays would have signalled. Times in ${site.timeZone}.`,
    ...beams,
    wrap(caution, width),
  ].join('\n\n')}\n`;
}
