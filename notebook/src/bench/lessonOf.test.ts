import { describe, expect, it } from 'vitest';
import { lessonWords } from '../sheet/sheet.js';
import { lessonOf } from './lessonOf.js';

describe('lessonOf', () => {
  it.each(lessonWords)('%s teaches, and answers at both ends of every slider', (word) => {
    const { controls, lesson } = lessonOf(word, {});
    expect(lesson.series.length).toBeGreaterThan(0);
    expect(lesson.answer.length).toBeGreaterThan(20);
    for (const { name, low, high } of controls)
      for (const value of [low, high]) expect(lessonOf(word, { [name]: value }).lesson.answer).not.toMatch(/NaN/);
  });

  it('keeps a setting within its slider, and passes over what is none', () => {
    const { controls, lesson } = lessonOf('two-paths', { threshold: 1e9, __proto__: 3, other: 1 });
    const top = controls.find(({ name }) => name === 'threshold')?.high ?? 0;
    expect(lesson).toEqual(lessonOf('two-paths', { threshold: top }).lesson);
  });
});
