import { percentToDecibels } from 'beamkeep/attenuation';
import type { CauseWord } from 'beamkeep/diagnosis';
import { useMemo } from 'preact/hooks';
import type { DailyLevels } from '../../bench/dailyLevels.js';
import type { BeamReading } from '../../bench/reading.js';
import { scaled } from '../../bench/scaled.js';
import { marginFigure, marginHeight } from '../../plots/marginFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import type { Cell } from '../../sheet/sheet.js';
import { dateInWords } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import { NeedsLog } from '../NeedsLog.js';
import { useAnswer } from '../useAnswer.js';
import type { OpenLog } from '../useLog.js';

/** What is left of each beam's margin, and until when. */
export function MarginCell({ cell }: { cell: Cell<'margin'> }) {
  return (
    <NeedsLog cell={cell.id}>
      {(log) => (
        <>
          <p class="key">
            The loss of each day, at its daily low (heavy) and at its median (light); findings that come and go are left
            out. The dashed line is what ends the margin. Where a trend supports a date, the shaded wedge holds four
            futures in five.
          </p>
          <div class="margins">
            {log.reading.beams.map((beam) => (
              <Margin key={beam.id} log={log} beam={beam} />
            ))}
          </div>
        </>
      )}
    </NeedsLog>
  );
}

function Margin({ log, beam }: { log: OpenLog; beam: BeamReading }) {
  const answer = useAnswer(() => log.bench.dailyLevels(beam.id, events(beam)), [log.bench, beam]);
  const days = answer.is === 'told' ? answer.told : undefined;
  const alarm = log.reading.site.beams.find(({ id }) => id === beam.id)?.alarmThreshold ?? Number.NaN;
  const limit = beam.forecast?.obscuration ?? alarm;
  const draw = useMemo(
    () => days && ((width: number, colours: Palette) => marginFigure(days, limit, beam.forecast, width, colours)),
    [days, limit, beam.forecast],
  );
  const words = sentences(beam, limit, days);
  return (
    <div class="margin">
      <h3>Beam {beam.id}</h3>
      <p class="answer">{words.join(' ')}</p>
      {days?.clock.length !== 0 && (
        <Plot
          figure={draw}
          failed={answer.is === 'refused'}
          height={marginHeight}
          name={[log.reading.site.name, 'margin', beam.id]}
          label={`Margin of beam ${beam.id}. ${words.join(' ')}`}
        />
      )}
    </div>
  );
}

/** Causes that come and go: their times are no part of the slow loss. */
const passing: readonly CauseWord[] = [
  'obstruction',
  'condensation',
  'process-aerosol',
  'ambient-light',
  'electrical-noise',
  'data-gap',
  'smoke-like',
];

const events = ({ findings }: BeamReading): (readonly [number, number])[] =>
  findings
    .filter(({ cause, ongoing }) => passing.includes(cause) && !ongoing)
    .flatMap(({ episodes, start, end }) => episodes ?? [[start, end] as const]);

function sentences({ forecast }: BeamReading, limit: number, days: DailyLevels | undefined): string[] {
  const words: string[] = [];
  const level = days?.low.findLast((value) => !Number.isNaN(value));
  if (level !== undefined) {
    const loss = Math.max(0, scaled(level, 'obscuration'));
    const left = percentToDecibels(limit) - percentToDecibels(loss);
    words.push(
      left > 0
        ? `At its daily low it last lost ${figure(loss)} %; ${figure(left)} dB of the ${figure(percentToDecibels(limit))} dB to ${figure(limit)} % are left.`
        : `At its daily low it last lost ${figure(loss)} %: the margin of ${figure(limit)} % is used up.`,
    );
    if (left > 0 && loss > 0.5) {
      const smoke = 100 * (1 - (1 - limit / 100) / (1 - loss / 100));
      words.push(`Without compensation, smoke that takes ${figure(smoke)} % now brings it there.`);
    }
  }
  if (!forecast) {
    words.push('No trend in this log supports a date.');
    return words;
  }
  const end = forecast.ends === 'alarm' ? 'the alarm threshold' : 'the end of the equipment’s compensation, a fault';
  words.push(
    `As it goes, it reaches ${end} about ${dateInWords(forecast.median)}: four times in five between ${dateInWords(forecast.low)} and ` +
      `${forecast.high ? dateInWords(forecast.high) : 'a day that is left open'}.`,
  );
  return words;
}
