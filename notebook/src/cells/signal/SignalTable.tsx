import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { BeamReading, TableRow, Window } from '../../bench/reading.js';
import { scaled } from '../../bench/scaled.js';
import { Scroll } from '../../parts/Scroll.js';
import type { Scale } from '../../sheet/sheet.js';
import { siteDates } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import type { OpenLog } from '../useLog.js';
import { scaleUnit } from './BeamLane.js';

const rows = 24;

interface SignalTableProps {
  readonly log: OpenLog;
  readonly beams: readonly BeamReading[];
  readonly window: Window;
  readonly scale: Scale;
}

/** The same as the plots, as a table: least, mean and greatest of equal stretches of the window. */
export function SignalTable({ log, beams, window, scale }: SignalTableProps) {
  const open = useSignal(false);
  return (
    <details
      class="table"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>The stretch in sight as a table</summary>
      {open.value && <OpenTable log={log} beams={beams} window={window} scale={scale} />}
    </details>
  );
}

function OpenTable({ log, beams, window, scale }: SignalTableProps) {
  const table = useSignal<readonly (readonly TableRow[])[]>([]);
  const ids = beams.map(({ id }) => id).join('\n');
  useEffect(() => {
    let outdated = false;
    void Promise.all(beams.map(({ id }) => log.bench.table(id, window, rows))).then((columns) => {
      if (!outdated) table.value = columns;
    });
    return () => {
      outdated = true;
    };
  }, [log.bench, ids, window.from, window.to]);
  const dates = siteDates(log.reading.site.timeZone);
  const say = (level: number): string => (Number.isNaN(level) ? '·' : figure(scaled(level, scale)));
  return (
    <Scroll label="Table of the stretch in sight">
      <table>
        <caption>
          Least, mean and greatest {scale} [{scaleUnit[scale]}] of {rows} equal stretches; a dot where there is no
          sample.
        </caption>
        <thead>
          <tr>
            <th scope="col">from</th>
            {beams.map(({ id }) => (
              <th scope="col" key={id}>
                {id}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {(table.value[0] ?? []).map(({ from }, row) => (
            <tr key={from}>
              <th scope="row">{dates.moment(from)}</th>
              {table.value.map((column, beam) => {
                const cell = column[row];
                const ends = cell ? [say(cell.low), say(cell.high)] : ['·', '·'];
                return (
                  <td key={beams[beam]?.id}>
                    {scale === 'level' ? ends[0] : ends[1]} … <b>{cell ? say(cell.middle) : '·'}</b> …{' '}
                    {scale === 'level' ? ends[1] : ends[0]}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
