import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const bench = vi.hoisted(() => ({ atWork: false }));
vi.mock('../bench/openBench.js', () => ({ benchAtWork: () => bench.atWork }));

import { inSpareTime } from './spareTime.js';

describe('inSpareTime', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal('window', globalThis);
  });
  afterEach(() => {
    bench.atWork = false;
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('waits while a bench is at work', async () => {
    const act = vi.fn();
    bench.atWork = true;
    inSpareTime(act);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(act).not.toHaveBeenCalled();
    bench.atWork = false;
    await vi.runAllTimersAsync();
    expect(act).toHaveBeenCalledOnce();
  });

  it('does not do what was given up', async () => {
    const act = vi.fn();
    inSpareTime(act)();
    await vi.runAllTimersAsync();
    expect(act).not.toHaveBeenCalled();
  });
});
