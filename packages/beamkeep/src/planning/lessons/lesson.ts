/*
 * A lesson is a pure function: settings in, curves and an answer in words out. Whoever draws it adds the sliders, by
 * its controls. What a lesson leaves out stands beside its answer.
 */

/** A slider of a lesson. */
export interface Control<Name extends string = string> {
  readonly name: Name;
  /** For people. */
  readonly words: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** Where the lesson begins. */
  readonly value: number;
}

/** Settings of a lesson: a value for every control. */
export type SettingsOf<Controls extends readonly Control[]> = {
  readonly [C in Controls[number] as C['name']]: number;
};

/** One curve. */
export interface LessonSeries {
  readonly name: string;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** What a lesson shows. */
export interface Lesson {
  readonly title: string;
  readonly question: string;
  readonly answer: string;
  readonly x: { readonly words: string; readonly unit: string };
  readonly y: { readonly words: string; readonly unit: string };
  readonly series: readonly LessonSeries[];
  /** Level lines to be drawn across, such as the alarm threshold. */
  readonly lines: readonly { readonly words: string; readonly y: number }[];
  readonly leftOut: readonly string[];
}

/** The settings at which a lesson begins. */
export const startOf = <Controls extends readonly Control[]>(controls: Controls): SettingsOf<Controls> =>
  Object.fromEntries(controls.map(({ name, value }) => [name, value])) as SettingsOf<Controls>;

/** Evenly spaced values from `low` to `high`, both included. */
export const spaced = (low: number, high: number, points: number): Float64Array =>
  Float64Array.from({ length: points }, (_, i) => low + ((high - low) * i) / (points - 1));

/** A figure for people: three significant digits. */
export const figure = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(3))) : 'never';
