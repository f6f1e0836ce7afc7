import { describe, expect, it } from 'vitest';
import { causeWords } from './finding.js';
import { type Double, partingOf, partings, partingsWith } from './partings.js';

describe('partings', () => {
  it('hold each pair once', () => {
    const pairs = partings.map(({ pair }) => [...pair].sort().join(' / '));
    expect(new Set(pairs).size).toBe(pairs.length);
  });
  it('part two different causes', () =>
    expect(partings.filter(({ pair: [one, other] }) => one === other || !known(one) || !known(other))).toEqual([]));
  it.each(causeWords)('know in what %s is most often mistaken', (cause) =>
    expect(partingsWith(cause)[0]?.pair).toContain(cause),
  );
  it('say where the pair looks alike, what to do, and two outcomes that differ', () => {
    for (const { alike, test, outcomes } of partings) {
      for (const text of [alike, test, ...outcomes]) expect(text).toMatch(/^[A-Z].{30,}\.$/);
      expect(outcomes[0]).not.toBe(outcomes[1]);
    }
  });
  it('law: wherever smoke may be, the look comes first', () => {
    for (const { pair, test } of partings)
      expect(/^Treat it as fire first/.test(test), pair.join()).toBe(pair.includes('smoke-like'));
  });
  it('never advise to raise a threshold or to lengthen a delay', () => {
    const advice = partings.flatMap(({ test, outcomes }) => [test, ...outcomes]).join(' ');
    expect(advice).not.toMatch(/raise the threshold|lengthen|longer delay/i);
  });
  it('name no part of another pair: the first outcome is of the first of the pair', () => {
    const wiping = partingOf('misalignment-drift', 'contamination');
    expect(wiping?.pair).toEqual(['contamination', 'misalignment-drift']);
    expect(wiping?.outcomes[0]).toContain('Most of the loss comes back on wiping');
  });
});

describe('partingOf', () => {
  it('knows a pair in either order', () =>
    expect(partingOf('smoke-like', 'obstruction')).toBe(partingOf('obstruction', 'smoke-like')));
  it('knows none of a cause and itself, nor of causes that do not look alike', () => {
    expect(partingOf('contamination', 'contamination')).toBeUndefined();
    expect(partingOf('vibration', 'contamination')).toBeUndefined();
  });
});

const known = (word: Double): boolean => word === 'renormalised' || causeWords.includes(word);
