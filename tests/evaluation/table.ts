import type { ComparedBeam } from './compare.js';
import { floors, standing } from './floors.js';
import type { Figure, Score } from './score.js';

const number = (value: number, digits = 2): string => (Number.isNaN(value) ? '-' : value.toFixed(digits));

/** `0.93 (0.81-0.97, n 48)`. */
const figure = ({ value, n, limits: [low, high] }: Figure, digits = 2): string =>
  Number.isNaN(value) ? '-' : `${number(value, digits)} (${number(low, digits)}-${number(high, digits)}, n ${n})`;

function columns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** The whole score as one page of text. Each figure carries its 95 % interval and what it rests on. */
export function scoreTable(score: Score): string {
  const causes = columns([
    ['cause', 'beams', 'precision', 'recall', 'F1', 'localisation'],
    ...score.causes.map(({ cause, beams, precision, recall, f1, localisation }) => [
      cause,
      String(beams),
      figure(precision),
      figure(recall),
      figure(f1),
      figure(localisation),
    ]),
  ]);
  const whole = columns([
    ['macro-F1 over the causes that occur', figure(score.macroF1, 3)],
    ['localisation, where stated', figure(score.localisation, 3)],
    ['smoke episodes found', figure(score.smokeRecall, 3)],
    ['false smoke a beam-year, all', figure(score.falseSmokeUnexcused)],
    ['  less dust and mist that grew as smoke may', figure(score.falseSmokeExcused)],
    ['  less also what must be called fire for its depth', figure(score.falseSmokeByRule)],
    ['false watch or act a beam-year, nothing at work', figure(score.falseAlerts)],
    ['calibration error of confidence', figure(score.calibrationError, 3)],
    ['  without smoke-like', figure(score.calibrationErrorWithoutSmoke, 3)],
    ['forecast: median error of the day / time left', figure(score.forecastError, 3)],
    ['forecast: true days in the 80 % interval', figure(score.forecastCoverage)],
    ['forecast: none where a day is true', String(score.forecastMissing)],
    ['forecast: a day where it never comes', String(score.forecastNeedless)],
  ]);
  const bins = columns([
    ['confidence', 'right', 'n'],
    ...score.reliability.map(({ confidence, right, n }) => [number(confidence), number(right), String(n)]),
  ]);
  const gate = columns([
    ['figure', 'reached', 'must', 'aim', ''],
    ...floors.map((floor) => [
      floor.name,
      number(floor.value(score), 3),
      String(floor.must),
      String(floor.aim),
      standing(floor, score),
    ]),
  ]);
  const heading =
    `${score.logs} logs, ${score.beams} beams, ${number(score.beamYears)} beam-years, ` +
    `${score.judgedEvents} of ${score.labelledEvents} labelled events judged`;
  return [heading, causes, whole, bins, gate].join('\n\n');
}

const instant = (time: number): string => `${new Date(time).toISOString().slice(0, 19)}Z`;
const stretch = ({ start, end }: { start: number; end: number }): string =>
  start === end ? instant(start) : `${instant(start)} to ${instant(end)}`;

/** What went wrong, one line a mistake, log by log. */
export function mistakes(beams: readonly ComparedBeam[]): string {
  return beams.flatMap(beamMistakes).join('\n');
}

function beamMistakes(beam: ComparedBeam): string[] {
  const said = beam.findings.map(({ cause, start, end, confidence, severity, stated, verdict, excused, demanded }) => ({
    cause,
    verdict,
    stated,
    words: `${cause} ${stretch({ start, end })} ${number(confidence)} ${severity}${excused ? ', excused' : ''}${demanded ? ', demanded' : ''}`,
  }));
  const lines = beam.events
    .filter(({ verdict }) => verdict !== 'found')
    .map(({ verdict, cause, magnitude, unit, ...event }) => {
      const share = beam.agreement.get(cause);
      const size = magnitude === null || magnitude === undefined ? '' : `, ${magnitude} ${unit ?? ''}`;
      const told = said.filter((finding) => finding.cause === cause).map(({ words }) => words);
      return (
        `${verdict} ${cause} ${stretch(event)}${size}${share === undefined ? '' : `, agreement ${number(share)}`}` +
        `${told.length > 0 ? `\n      said: ${told.slice(0, 4).join('; ')}${told.length > 4 ? ` and ${told.length - 4} more` : ''}` : ''}`
      );
    });
  for (const { verdict, stated, words } of said)
    if (verdict === 'wrong') lines.push(`${stated ? 'wrong' : 'wrong (below 0.5)'} ${words}`);
  for (const [cause, count] of beam.strays) if (count > 0) lines.push(`${count} more ${cause} than labelled`);
  if (beam.forecast) lines.push(...forecastLines(beam.forecast));
  return lines.map((line) => `${beam.log} ${beam.id}  ${line}`);
}

function forecastLines({ day, from, stated }: NonNullable<ComparedBeam['forecast']>): string[] {
  const date = (time: number | null): string => (time === null ? 'open' : new Date(time).toISOString().slice(0, 10));
  if (!stated) return day === null ? [] : [`no forecast, true day ${date(day)}`];
  const told = `forecast ${date(stated.median)} (${date(stated.low)} to ${date(stated.high)})`;
  if (day === null) return [`${told}, it never comes`];
  const inside = stated.low <= day && (stated.high === null || day <= stated.high);
  const error = Math.abs(stated.median - day) / (day - from);
  return [`${told}, true day ${date(day)}: error ${number(error)}, ${inside ? 'inside' : 'outside'}`];
}
