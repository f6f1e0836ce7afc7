import type { BeamDiagnosisJson, FindingJson } from 'beamkeep';
import type { BeamRecord } from 'beamkeep/columns';
import type { CauseWord } from 'beamkeep/diagnosis';
import type { Beam } from 'beamkeep/site';
import { plot } from '../plot/plot.js';
import { alarmLevel } from './alarmLevel.js';
import { causeText, findingRow } from './finding.js';
import { forecastSentence } from './forecast.js';
import type { Look } from './look.js';
import { meaningOf } from './meaningOf.js';
import { counted, plural } from './numbers.js';
import { ordered } from './ordered.js';
import { table } from './table.js';
import type { Clock } from './times.js';
import { wrap } from './wrap.js';

/** Findings of one cause and severity `note` that are told one by one before the rest is counted. */
const notesShown = 6;

function findingsTable(findings: readonly FindingJson[], told: Clock, { colours }: Look): string {
  const notes = new Map<CauseWord, number>();
  const shown = findings.filter(({ cause, severity }) => {
    if (severity !== 'note') return true;
    const before = notes.get(cause) ?? 0;
    notes.set(cause, before + 1);
    return before < notesShown;
  });
  const head = ['duty', 'when', 'cause', 'how sure'].map(colours.faint);
  const rest = [...notes]
    .filter(([, many]) => many > notesShown)
    .map(([cause, many]) => [colours.note('note'), `and ${counted(many - notesShown)} more`, meaningOf(cause), '']);
  return table([head, ...shown.map((finding) => findingRow(finding, told, colours)), ...rest], '  ');
}

/** The findings in sentences, cause by cause, the most pressing cause first. */
function sentences(findings: readonly FindingJson[], told: Clock, { colours, width }: Look): string[] {
  const causes = [...new Set(findings.map(({ cause }) => cause))];
  return causes.map((cause) => {
    const own = findings.filter((finding) => finding.cause === cause);
    const pressing = own.filter(({ severity }) => severity !== 'note');
    const notes = own.filter(({ severity }) => severity === 'note').slice(0, notesShown);
    return causeText(cause, [...pressing, ...notes], told, colours, width);
  });
}

/**
 * One beam for people: a plot, a table, sentences, the forecast and what was assumed.
 *
 * @param beam of a diagnosis, its texts safe to print
 * @param settings of the beam in the site file
 * @param record its levels, for the plot
 */
export function beamText(
  beam: BeamDiagnosisJson,
  settings: Beam | undefined,
  record: BeamRecord | undefined,
  told: Clock,
  look: Look,
): string {
  const { colours, width } = look;
  const { id, from, to, samples, forecast, assumed } = beam;
  const findings = ordered(beam.findings);
  const span =
    from === null || to === null
      ? 'no usable samples'
      : `${told.wall(Date.parse(from))} to ${told.wall(Date.parse(to))}, ${plural(samples, 'sample')}`;
  const drawn =
    record === undefined || settings === undefined
      ? []
      : plot(record.trace, findings, {
          ...look,
          told,
          alarmLevel: alarmLevel(settings),
          alarmThreshold: settings.alarmThreshold,
        });
  return [
    `${colours.strong(`Beam ${id}`)}  ${span}`,
    ...(drawn.length === 0 ? [] : [drawn.join('\n')]),
    findings.length === 0 ? '  Nothing found.' : findingsTable(findings, told, look),
    ...sentences(findings, told, look),
    [
      wrap(forecastSentence(forecast), width, '  ', '    '),
      ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    ].join('\n'),
  ].join('\n\n');
}
