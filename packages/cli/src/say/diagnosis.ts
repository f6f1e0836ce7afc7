import type { BeamDiagnosisJson, DiagnosisJson } from 'beamkeep';
import type { BeamRecord } from 'beamkeep/columns';
import type { Site } from 'beamkeep/site';
import { beamText } from './beam.js';
import { caution } from './cautions.js';
import { eventsText } from './events.js';
import { inputText } from './inputText.js';
import type { Look } from './look.js';
import { onlyPossible, ordered } from './ordered.js';
import { plain, plainly } from './plain.js';
import { table } from './table.js';
import { clock } from './times.js';
import { wrap } from './wrap.js';

/** What the text shows beside the diagnosis itself. */
export interface Shown {
  readonly site: Pick<Site, 'name' | 'timeZone' | 'beams'>;
  /** What was read of each beam, for the plots. */
  readonly records: readonly BeamRecord[];
}

const duties = 'Duty: "act" is go, or treat as fire; "watch" is plan it; "note" is know it.';

/** One line a beam, the most pressing first; a question mark behind what is only possible. */
function overview(beams: readonly BeamDiagnosisJson[], { colours, width }: Look): string {
  const rank = ({ findings }: BeamDiagnosisJson): number => {
    const first = ordered(findings)[0];
    return first === undefined ? 3 : ['act', 'watch', 'note'].indexOf(first.severity);
  };
  const rows = [...beams]
    .sort((a, b) => rank(a) - rank(b))
    .map(({ id, findings }) => {
      const all = ordered(findings);
      const certain = new Set(all.filter((each) => !onlyPossible(each)).map(({ cause }) => cause));
      const causes = new Set(all.map(({ cause }) => (certain.has(cause) ? cause : `${cause}?`)));
      const severity = all[0]?.severity;
      return [
        id,
        severity === undefined ? '' : colours[severity](severity),
        causes.size === 0 ? 'nothing found' : wrap([...causes].join(', '), width - 24),
      ];
    });
  return table([['beam', 'duty', 'causes'].map(colours.faint), ...rows], '  ');
}

/**
 * A diagnosis for people: what stands out, then beam by beam a plot, a table, sentences, the forecast and what was
 * assumed, then the panel's list where one was given, then what the reader of the log mended, then the cautions.
 */
export function diagnosisText(answer: DiagnosisJson, { site, records }: Shown, look: Look): string {
  const { colours, width } = look;
  const { beams, clock: panel, events, input } = plainly(answer);
  const told = clock(site.timeZone);
  const head = wrap(`Times in ${site.timeZone}. Losses are obscuration. ${duties}`, width);
  const sections = beams.map((beam, at) => {
    const id = answer.beams[at]?.id;
    const settings = site.beams.find((each) => each.id === id);
    const record = records.find((each) => each.id === id);
    return beamText(beam, settings, record, told, look);
  });
  return `${[
    `${colours.strong(plain(site.name))}\n${head}`,
    ...(beams.length > 1 ? [overview(beams, look)] : []),
    ...sections,
    ...(panel === undefined || events === undefined ? [] : [eventsText(panel, events, told, look)]),
    inputText(input, width),
    wrap(caution, width),
  ].join('\n\n')}\n`;
}
