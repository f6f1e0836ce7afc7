import { fileName } from '../../parts/fileName.js';
import { saveText } from '../../parts/saveText.js';
import type { Cell } from '../../sheet/sheet.js';
import type { OpenLog } from '../useLog.js';
import { findingsCsv } from './findingsCsv.js';

/** The findings for other programs: as CSV for a table, as JSON in the project's own format. */
export function SaveFindings({ log, cell }: { log: OpenLog; cell: Cell<'findings'> }) {
  const { reading } = log;
  return (
    <div class="buttons" data-screen>
      <button
        type="button"
        onClick={() =>
          saveText(
            fileName([reading.site.name, 'findings'], 'csv'),
            'text/csv',
            findingsCsv(reading, cell.settings.verdicts),
          )
        }
      >
        Save as CSV
      </button>
      <button
        type="button"
        onClick={() => saveText(fileName([reading.site.name, 'findings'], 'json'), 'application/json', reading.json)}
      >
        Save as JSON
      </button>
    </div>
  );
}
