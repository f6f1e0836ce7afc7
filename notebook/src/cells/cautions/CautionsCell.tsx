import type { Cell } from '../../sheet/sheet.js';
import { useLog } from '../useLog.js';

/** What this sheet cannot know, and what it took for granted. */
export function CautionsCell({ cell }: { cell: Cell<'cautions'> }) {
  const { state } = useLog(cell.id);
  const assumed = state.is === 'read' ? state.reading.beams.filter(({ assumed }) => assumed.length > 0) : [];
  return (
    <div class="cautions">
      <ul>
        <li>
          <b>A smoke alarm is answered as a smoke alarm.</b> No explanation here is a reason to wait, reset or isolate
          before someone has looked. Dust or mist can take as much light as smoke: the shape of a curve cannot prove
          that there was none.
        </li>
        <li>
          The findings are worked out from the received signal alone, with a probability. They tell where to look first,
          and each says what would settle it.
        </li>
        <li>
          The local code and the maker’s instructions decide on thresholds, delays, spacing, tests and cleaning; whoever
          is responsible for the system decides on work.
        </li>
        <li>
          A beam with slow loss and no compensation alarms at less smoke than its threshold says; one whose reflector
          lets stray light back may never reach it.
        </li>
      </ul>
      {assumed.length > 0 && (
        <>
          <h3>Taken for granted in this log</h3>
          <p>The site file does not give these, so defaults were used. Give them, and the answers become firmer.</p>
          <table class="assumed">
            <tbody>
              {assumed.map(({ id, assumed: what }) => (
                <tr key={id}>
                  <th scope="row">{id}</th>
                  <td>{what.join('; ')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </div>
  );
}
