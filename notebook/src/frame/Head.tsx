import { retitled } from '../sheet/edits.js';
import { deskOf } from '../state/desk.js';
import { edit, sheet } from '../state/store.js';
import { siteDates } from '../words/dates.js';
import { counted, lengthInWords } from '../words/numbers.js';

/** The title block: what this sheet is about, at a glance and on paper. */
export function Head() {
  const { title, cells } = sheet.value;
  const first = cells.find((cell) => cell.kind === 'log');
  const state = first ? deskOf(first.id).state.value : undefined;
  const reading = state?.is === 'read' ? state.reading : undefined;
  const dates = reading && siteDates(reading.site.timeZone);
  const samples = reading?.beams.reduce((sum, beam) => sum + beam.samples, 0);
  const rows: readonly (readonly [string, string])[] = [
    ['Site', reading?.site.name ?? '–'],
    ['Log', reading ? `${dates?.date(reading.from)} to ${dates?.date(reading.to)}` : '–'],
    ['Length', reading ? lengthInWords(reading.to - reading.from) : '–'],
    ['Beams', reading ? counted(reading.beams.length) : '–'],
    ['Samples', samples === undefined ? '–' : counted(samples)],
    ['Clock', reading?.site.timeZone ?? '–'],
  ];
  return (
    <header class="head">
      <div class="head-title">
        <p class="head-kind">Beam worksheet</p>
        <h1>
          <input
            aria-label="Title of this sheet"
            value={title}
            onInput={(event) => {
              const { value } = event.currentTarget;
              edit((now) => retitled(now, value), 'title');
            }}
          />
          <span class="on-paper">{title}</span>
        </h1>
      </div>
      <dl class="block">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
}
