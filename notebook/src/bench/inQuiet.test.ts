import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { inQuiet, quick } from './inQuiet.js';

describe('inQuiet', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('slow work waits for as long as something quick is asked', async () => {
    const work = vi.fn(() => 'done');
    const answer = inQuiet(work);
    for (let times = 0; times < 5; times++) {
      await vi.advanceTimersByTimeAsync(60);
      quick();
    }
    expect(work).not.toHaveBeenCalled();
    await vi.runAllTimersAsync();
    expect(await answer).toBe('done');
  });

  it('something quick goes before slow work that was asked earlier and has not begun', async () => {
    const order: string[] = [];
    const answers = ['first', 'second'].map((name) =>
      inQuiet(async () => {
        order.push(name);
        setTimeout(() => {
          quick();
          order.push('quick');
        });
      }),
    );
    await vi.runAllTimersAsync();
    await Promise.all(answers);
    expect(order.slice(0, 3)).toEqual(['first', 'quick', 'second']);
  });

  it('work that fails fails alone', async () => {
    const failed = expect(inQuiet(() => Promise.reject(new Error('no')))).rejects.toThrow('no');
    const next = inQuiet(() => 1);
    await vi.runAllTimersAsync();
    await failed;
    expect(await next).toBe(1);
  });
});
