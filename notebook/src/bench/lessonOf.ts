import {
  type Control,
  delayAgainstForkLift,
  delayAgainstForkLiftControls,
  dirtEatingMargin,
  dirtEatingMarginControls,
  flankUnderHotRoof,
  flankUnderHotRoofControls,
  highHall,
  highHallControls,
  type Lesson,
  startOf,
  twoPaths,
  twoPathsControls,
} from 'beamkeep/planning';
import type { LessonWord } from '../sheet/sheet.js';

/** A lesson at some settings, and the sliders that belong to it. */
export interface TaughtLesson {
  readonly controls: readonly Control[];
  readonly lesson: Lesson;
}

/** Settings by the names of the sliders; what is not named is where the lesson begins. */
export type LessonValues = Readonly<Record<string, number>>;

/**
 * A lesson at some settings.
 *
 * @param word which lesson
 * @param values settings; names that are no slider of the lesson are passed over, values are kept within its ends
 */
export function lessonOf(word: LessonWord, values: LessonValues): TaughtLesson {
  const taught = <const Controls extends readonly Control[]>(
    controls: Controls,
    teach: (settings: { readonly [C in Controls[number] as C['name']]: number }) => Lesson,
  ): TaughtLesson => ({ controls, lesson: teach({ ...startOf(controls), ...kept(controls, values) }) });
  switch (word) {
    case 'two-paths':
      return taught(twoPathsControls, twoPaths);
    case 'flank-under-hot-roof':
      return taught(flankUnderHotRoofControls, flankUnderHotRoof);
    case 'dirt-eating-margin':
      return taught(dirtEatingMarginControls, dirtEatingMargin);
    case 'delay-against-fork-lift':
      return taught(delayAgainstForkLiftControls, delayAgainstForkLift);
    case 'high-hall':
      return taught(highHallControls, highHall);
  }
}

function kept(controls: readonly Control[], values: LessonValues): LessonValues {
  return Object.fromEntries(
    controls.flatMap(({ name, low, high }) => {
      const value = Object.hasOwn(values, name) ? values[name] : undefined;
      return value === undefined || !Number.isFinite(value) ? [] : [[name, Math.min(high, Math.max(low, value))]];
    }),
  );
}
