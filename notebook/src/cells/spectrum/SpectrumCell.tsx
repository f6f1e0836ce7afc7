import { useMemo } from 'preact/hooks';
import { type Peak, peaksOf, type SwingSpectrum } from '../../bench/spectrumOf.js';
import { Choice } from '../../parts/Choice.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { spectrumFigure, spectrumHeight } from '../../plots/spectrumFigure.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { siteDates } from '../../words/dates.js';
import { figure, lengthInWords } from '../../words/numbers.js';
import { NeedsLog } from '../NeedsLog.js';
import { useAnswer } from '../useAnswer.js';
import { type OpenLog, wholeOf } from '../useLog.js';

/** Which periods return in the stretch that is in sight. */
export function SpectrumCell({ cell }: { cell: Cell<'spectrum'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Periods cell={cell} log={log} />}</NeedsLog>;
}

function Periods({ cell, log }: { cell: Cell<'spectrum'>; log: OpenLog }) {
  const { bench, desk, reading } = log;
  const ids = reading.beams.map(({ id }) => id);
  const beam = ids.find((id) => id === cell.settings.beam) ?? ids[0];
  const { from, to } = desk.window.value ?? wholeOf(reading);
  const answer = useAnswer(beam === undefined ? null : () => bench.spectrum(beam, { from, to }), [
    bench,
    beam,
    from,
    to,
  ]);
  const spectrum = answer.is === 'told' ? answer.told : undefined;
  const draw = useMemo(
    () => spectrum && ((width: number, colours: Palette) => spectrumFigure(spectrum, width, colours)),
    [spectrum],
  );
  if (beam === undefined) return <p class="empty">This log has no beam.</p>;
  const words = spectrum ? sentence(beam, spectrum, peaksOf(spectrum, 4)) : '';
  return (
    <>
      <div class="settings">
        <Choice
          legend="Beam"
          options={ids.map((id) => [id, id] as const)}
          value={beam}
          onChange={(id) => edit((sheet) => set(sheet, cell, { beam: id }))}
        />
      </div>
      <p class="answer">
        {words
          ? `${words} This is of the stretch in sight above, ${siteDates(reading.site.timeZone).stretch(from, to)}.`
          : 'Not worked out yet.'}
      </p>
      {spectrum?.period.length !== 0 && (
        <Plot
          figure={draw}
          failed={answer.is === 'refused'}
          height={spectrumHeight}
          label={words || `Periods that return on beam ${beam}.`}
          name={[reading.site.name, 'periods', beam]}
        />
      )}
    </>
  );
}

function sentence(beam: string, { period, step }: SwingSpectrum, peaks: readonly Peak[]): string {
  if (period.length === 0) return `The stretch is too short to tell which periods return on beam ${beam}.`;
  const found = peaks.map((peak) => `every ${lengthInWords(peak.period)} by ±${figure(peak.swing, 2)} dB`).join(', ');
  return (
    `${found ? `On beam ${beam} the loss swings ${found}.` : `On beam ${beam} no period stands out.`} ` +
    `What returns faster than every ${lengthInWords(2 * step)} cannot be told at this spacing: it shows at a slower period, or as spread.`
  );
}
