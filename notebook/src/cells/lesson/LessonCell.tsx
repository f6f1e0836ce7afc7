import { useCallback, useEffect, useState } from 'preact/hooks';
import type { TaughtLesson } from '../../bench/lessonOf.js';
import { Asked } from '../../parts/Asked.js';
import { lessonFigure, lessonHeight } from '../../plots/lessonFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { set } from '../../sheet/edits.js';
import { type Cell, type LessonWord, lessonWords } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { figure } from '../../words/numbers.js';
import { typeset } from '../../words/typeset.js';

const titles: Readonly<Record<LessonWord, string>> = {
  'two-paths': 'one threshold on two path lengths',
  'flank-under-hot-roof': 'on the flank under a hot roof',
  'dirt-eating-margin': 'dirt eats the margin',
  'delay-against-fork-lift': 'delay against fork-lifts',
  'high-hall': 'smoke in a high hall',
};

/** A question of the trade with sliders: what would happen if. */
export function LessonCell({ cell }: { cell: Cell<'lesson'> }) {
  const { lesson: word, values } = cell.settings;
  const [taught, setTaught] = useState<TaughtLesson>();
  useEffect(() => {
    let outdated = false;
    void helper()
      .lesson(word, values)
      .then((answer) => {
        if (!outdated) setTaught(answer);
      });
    return () => {
      outdated = true;
    };
  }, [word, values]);
  const draw = useCallback(
    (width: number, colours: Palette) => lessonFigure(taught?.lesson ?? empty, width, colours),
    [taught],
  );
  return (
    <>
      <div class="settings">
        <label class="field">
          <span>Lesson</span>
          <select
            value={word}
            onChange={(event) => {
              const next = lessonWords.find((each) => each === event.currentTarget.value) ?? word;
              edit((sheet) => set(sheet, cell, { lesson: next, values: {} }));
            }}
          >
            {lessonWords.map((each) => (
              <option key={each} value={each}>
                {titles[each]}
              </option>
            ))}
          </select>
        </label>
        {taught?.controls.map(({ name, words, unit, low, high, step, value }) => (
          <label class="field slider" key={name}>
            <span>
              {words}: <b>{figure(values[name] ?? value)}</b> {isCount(unit) ? '' : unit}
            </span>
            <input
              type="range"
              min={low}
              max={high}
              step={step}
              value={values[name] ?? value}
              onInput={(event) => {
                const next = event.currentTarget.valueAsNumber;
                edit((sheet) => set(sheet, cell, { values: { ...values, [name]: next } }), `${cell.id} ${name}`);
              }}
            />
          </label>
        ))}
      </div>
      {taught && (
        <>
          <Asked
            of={taught.controls.map(({ name, words, unit, value }) => [
              words,
              `${figure(values[name] ?? value)}${isCount(unit) ? '' : ` ${unit}`}`,
            ])}
          />
          <p class="answer">
            <i>{typeset(taught.lesson.question)}</i> {typeset(taught.lesson.answer)}
          </p>
          <Plot
            figure={draw}
            height={lessonHeight}
            name={['lesson', taught.lesson.title]}
            label={`${taught.lesson.title}. ${taught.lesson.answer}`}
          />
          <p class="key">Left out: {typeset(taught.lesson.leftOut.join(' '))}</p>
        </>
      )}
    </>
  );
}

/** The unit of a count in a stretch of time, which the words of the slider say: 12 passes a day. */
const isCount = (unit: string): boolean => unit.startsWith('1/');

const empty: TaughtLesson['lesson'] = {
  title: '',
  question: '',
  answer: '',
  x: { words: '', unit: '' },
  y: { words: '', unit: '' },
  series: [],
  lines: [],
  leftOut: [],
};
