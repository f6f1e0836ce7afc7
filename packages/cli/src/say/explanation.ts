import type { BeamExplanationJson, ExplanationJson } from 'beamkeep/moments';
import type { Site } from 'beamkeep/site';
import { caution } from './cautions.js';
import { inputText } from './inputText.js';
import type { Look } from './look.js';
import { meaningOf } from './meaningOf.js';
import { plural } from './numbers.js';
import { plain, plainly } from './plain.js';
import { runnerUpText } from './runnerUp.js';
import { type Clock, clock } from './times.js';
import { unparted, wrap } from './wrap.js';

/** A share of the days from which on a beam is told about at length. */
const oftenEnough = 0.2;

/** Whether a beam is told about at length. */
const tells = ({ recurs: { keepsTo, onWeekday }, signals }: BeamExplanationJson): boolean =>
  keepsTo === 'weekday' || signals.length > 0 || onWeekday.shown >= oftenEnough * onWeekday.of;

/** How much a beam has to tell: what keeps to the day and hour asked about comes first. */
const weight = ({ recurs: { keepsTo, onWeekday }, signals }: BeamExplanationJson): number =>
  (keepsTo === 'weekday' ? 2 : 0) + (signals.length > 0 ? 1 : 0) + onWeekday.shown / Math.max(1, onWeekday.of);

function beamText(
  beam: BeamExplanationJson,
  { asked: { instant }, beforeTests }: ExplanationJson,
  told: Clock,
  { colours, width }: Look,
): string {
  const isInstant = instant !== null;
  const { id, words, causes, runnerUp, action, settles, cautions, assumed } = beam;
  const paragraph = (text: string, first = '  ', hanging = '  ') => wrap(unparted(text), width, first, hanging);
  const item = (text: string) => paragraph(text, '  - ', '    ');
  const [first] = causes;
  const named = first === undefined ? [] : [`${first.cause}: ${meaningOf(first.cause)}`];
  return [
    `${colours.strong(`Beam ${id}`)}  ${named.join('')}`.trimEnd(),
    ...(isInstant ? [words.signal, words.recurs] : [words.recurs, words.signal]).map((text) => paragraph(text)),
    [
      paragraph(words.causes.length > 0 ? 'What was found:' : 'Nothing was found at that time.'),
      ...words.causes.map(item),
    ].join('\n'),
    ...(action === null ? [] : [paragraph(`What to do: ${action}`, '  ', '    ')]),
    ...(settles === null ? [] : [paragraph(`What settles it: ${settles}`, '  ', '    ')]),
    ...(runnerUp === null
      ? []
      : [`${runnerUpText(runnerUp, told, width, '  ')}\n${paragraph(beforeTests, '    ', '    ')}`]),
    ...(cautions.length === 0 ? [] : [[paragraph('Mind:'), ...cautions.map(item)].join('\n')]),
    ...(assumed.length === 0 ? [] : [paragraph(`Assumed: ${assumed.join('; ')}.`, '  ', '    ')]),
  ].join('\n\n');
}

/** A beam with little to tell, in one paragraph. */
function briefText({ id, words, causes }: BeamExplanationJson, width: number): string {
  const found = causes.map(({ cause, days }) => `${cause} on ${plural(days, 'day')}`).join(', ');
  const told = found === '' ? '' : ` Found: ${found}. For more: --beam ${id}.`;
  return wrap(unparted(`${id}: ${words.recurs}${told}`), width);
}

/** Beams with nothing to tell, in one paragraph. */
function quietText(beams: readonly BeamExplanationJson[], width: number): string[] {
  if (beams.length === 0) return [];
  const ids = beams.map(({ id, causes }) => {
    const going = causes.map(({ cause }) => cause).join(', ');
    return going === '' ? id : `${id} (${going} ${causes.length === 1 ? 'goes' : 'go'} on there)`;
  });
  return [wrap(`Nothing stands out at that time on ${ids.join('; ')}.`, width)];
}

/**
 * An explanation for people: beam by beam what the signal did, what recurs, what it is, what to do and what to mind; the
 * beams with most to tell first, those with nothing in one line.
 */
export function explanationText(answer: ExplanationJson, site: Pick<Site, 'name' | 'timeZone'>, look: Look): string {
  const { colours, width } = look;
  const safe = plainly(answer);
  const { asked, beams, input } = safe;
  const told = clock(site.timeZone);
  const loud = beams.filter(({ quiet }) => !quiet).sort((a, b) => weight(b) - weight(a));
  // Where one beam alone or one instant was asked about, all of it is the answer.
  const whole = beams.length === 1 ? beams : asked.instant === null ? loud.filter(tells) : loud;
  const brief = loud.filter((beam) => !whole.includes(beam));
  return `${[
    `${colours.strong(`${plain(site.name)}: why at ${asked.at}?`)}\n${wrap(`Times in ${site.timeZone}, by the log's clock. Losses are obscuration.`, width)}`,
    ...whole.map((beam) => beamText(beam, safe, told, look)),
    ...brief.map((beam) => briefText(beam, width)),
    ...(beams.length === 1
      ? []
      : quietText(
          beams.filter(({ quiet }) => quiet),
          width,
        )),
    inputText(input, width),
    wrap(caution, width),
  ].join('\n\n')}\n`;
}
