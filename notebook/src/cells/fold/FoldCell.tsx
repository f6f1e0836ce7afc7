import { useMemo } from 'preact/hooks';
import type { DayFold } from '../../bench/dayFold.js';
import { Asked } from '../../parts/Asked.js';
import { Choice } from '../../parts/Choice.js';
import { foldFigure, foldHeight } from '../../plots/foldFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { NeedsLog } from '../NeedsLog.js';
import { useAnswer } from '../useAnswer.js';
import type { OpenLog } from '../useLog.js';

/** The log folded at midnight: what returns with the hour stands as a band. */
export function FoldCell({ cell }: { cell: Cell<'fold'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Folded cell={cell} log={log} />}</NeedsLog>;
}

function Folded({ cell, log }: { cell: Cell<'fold'>; log: OpenLog }) {
  const { bench, reading } = log;
  const { scale } = cell.settings;
  const ids = reading.beams.map(({ id }) => id);
  const beam = ids.find((id) => id === cell.settings.beam) ?? ids[0];
  const answer = useAnswer(beam === undefined ? null : () => bench.dayFold(beam), [bench, beam]);
  const fold = answer.is === 'told' ? answer.told : undefined;
  const zone = reading.site.timeZone;
  const draw = useMemo(
    () => fold && ((width: number, colours: Palette) => foldFigure(fold, scale, zone, width, colours)),
    [fold, scale, zone],
  );
  if (beam === undefined) return <p class="empty">This log has no beam.</p>;
  return (
    <>
      <div class="settings">
        <Choice
          legend="Beam"
          options={ids.map((id) => [id, id] as const)}
          value={beam}
          onChange={(id) => edit((sheet) => set(sheet, cell, { beam: id }))}
        />
        <Choice
          legend="Scale"
          options={[
            ['obscuration', 'obscuration %'],
            ['level', 'level %'],
            ['loss', 'loss dB'],
          ]}
          value={scale}
          onChange={(to) => edit((sheet) => set(sheet, cell, { scale: to }))}
        />
      </div>
      <Asked of={[['Beam', beam]]} />
      <Plot
        figure={draw}
        failed={answer.is === 'refused'}
        height={foldHeight}
        name={[reading.site.name, 'folded by day', beam]}
        label={`Beam ${beam} folded at midnight: one column a date, one row each ten minutes of the day; a stronger tone means more loss.`}
      />
      <p class="key">
        One column a date, one row each ten minutes of the day; a stronger tone means more loss, open means no sample. A
        level band comes with the hour (work, mist before dawn), one that wanders with the season comes with the sun, a
        spot came once.
      </p>
      {fold && <HourTable fold={fold} beam={beam} />}
    </>
  );
}

/** The same as numbers: the mean of each hour of the day over the whole log. */
function HourTable({ fold, beam }: { fold: DayFold; beam: string }) {
  const perHour = fold.rows / 24;
  const columns = fold.dates.length;
  const hours = Array.from({ length: 24 }, (_, hour) => {
    const cells = fold.level
      .subarray(hour * perHour * columns, (hour + 1) * perHour * columns)
      .filter((level) => !Number.isNaN(level));
    return { hour, mean: cells.reduce((sum, level) => sum + level, 0) / cells.length };
  });
  return (
    <details class="table">
      <summary>Mean of each hour of the day as a table</summary>
      <table>
        <caption>Mean obscuration of beam {beam} by hour of the day [%]</caption>
        <thead>
          <tr>
            <th scope="col">hour</th>
            <th scope="col">mean [%]</th>
          </tr>
        </thead>
        <tbody>
          {hours.map(({ hour, mean }) => (
            <tr key={hour}>
              <th scope="row">{String(hour).padStart(2, '0')}:00</th>
              <td>{Number.isNaN(mean) ? '·' : (100 * (1 - mean)).toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
