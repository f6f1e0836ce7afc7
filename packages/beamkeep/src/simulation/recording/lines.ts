import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Mishaps } from './mishaps.js';
import type { Recording } from './recording.js';
import { stamp } from './stamp.js';
import { decimals } from './unit.js';

/** A column of a log: its name, its readings (NaN where missing) and the step it is written with. */
export interface Column {
  readonly name: string;
  readonly values: Float64Array;
  readonly step: number;
  /** Readings of a beam may carry a percent sign, side channels never do. */
  readonly percent: boolean;
}

/**
 * The lines of a log, header first, each with its line end; faults of the logger included.
 *
 * @param scene time, zone and recording
 * @param columns beams and side channels in the order of the file
 * @param mishaps what becomes of each line
 */
export function* lines(
  scene: Scene,
  columns: readonly Column[],
  { gone, broken, doubled, late }: Mishaps,
): Generator<string> {
  const { recording } = scene.scenario;
  const { separator, lineEnd, decimalComma, missing } = recording;
  const draw = random(scene.seed, 'broken');
  const stampOf = stamp(scene);
  const names = typeof recording.timeColumn === 'string' ? [recording.timeColumn] : recording.timeColumn;
  const header = recording.longForm ? [...names, 'name', 'value'] : [...names, ...columns.map(({ name }) => name)];
  yield (recording.byteOrderMark ? '\ufeff' : '') + header.join(separator) + lineEnd;

  const places = columns.map(({ step }) => decimals(step));
  const cell = (column: number, value: number) => {
    if (Number.isNaN(value)) return missing;
    const text = value.toFixed(places[column] ?? 0);
    const plain = /^-0\.?0*$/.test(text) ? text.slice(1) : text;
    return (
      (decimalComma ? plain.replace('.', ',') : plain) + (recording.percentSign && columns[column]?.percent ? ' %' : '')
    );
  };
  const shown = columns.map(() => Number.NaN);
  const waiting: { at: number; text: string }[] = [];
  for (let i = 0; i < scene.time.length; i++) {
    let text = '';
    if (gone[i] === 0 || broken[i] === 1) {
      const time = stampOf(scene.time[i] as number);
      const cells = columns.map(({ values }) => values[i] as number);
      const last = i === scene.time.length - 1;
      const changed = cells.map(
        (value, k) => recording.sampling !== 'on-change' || last || i === 0 || !Object.is(value, shown[k]),
      );
      if (recording.longForm) {
        for (const [k, value] of cells.entries()) {
          if (!changed[k] || (Number.isNaN(value) && missing === '')) continue;
          text += [...time, columns[k]?.name ?? '', cell(k, value)].join(separator) + lineEnd;
        }
      } else if (changed.includes(true)) {
        text = [...time, ...cells.map((value, k) => cell(k, value))].join(separator) + lineEnd;
      }
      for (const [k, value] of cells.entries()) shown[k] = value;
      if (broken[i] === 1) text = breakLine(text, draw, recording);
    }
    const delay = late[i] as number;
    if (delay > 0 && text !== '') waiting.push({ at: i + delay, text });
    else if (text !== '') yield doubled[i] === 1 ? text + text : text;
    while (waiting[0] && waiting[0].at <= i) yield waiting.shift()?.text ?? '';
  }
  for (const { text } of waiting) yield text;
}

/** A line as a logger leaves it when power fails or a cable is bad. */
function breakLine(text: string, draw: ReturnType<typeof random>, { separator, lineEnd }: Recording): string {
  const line = text.slice(0, Math.max(0, text.indexOf(lineEnd)));
  const cut = line.slice(0, draw.integer(1, Math.max(1, Math.min(12, line.length - 1))));
  const hollow = line.replaceAll(/[^,;\t]/g, '');
  return draw.pick([cut, `${cut}#?`, '-- reset --', hollow, `${cut}${cut.slice(0, 4)}E${separator}`]) + lineEnd;
}
