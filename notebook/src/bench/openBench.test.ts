import { expose } from 'comlink';
import { afterEach, expect, it, vi } from 'vitest';
import { benchAtWork, type OpenBench, openBench } from './openBench.js';

/** A worker in this thread, which says what was posted to it and answers a site file's refusal with the file's name. */
class WorkerHere extends EventTarget {
  static posted = 0;
  static ended = 0;
  private readonly inside = new MessageChannel();

  constructor() {
    super();
    this.inside.port1.onmessage = ({ data }) => this.dispatchEvent(new MessageEvent('message', { data }));
    expose({ refusal: (_: string, name: string) => name }, this.inside.port2);
  }

  postMessage(message: unknown): void {
    WorkerHere.posted++;
    this.inside.port1.postMessage(message);
  }

  terminate(): void {
    WorkerHere.ended++;
    this.inside.port1.close();
  }
}

let open: OpenBench | undefined;
afterEach(() => {
  open?.close();
  vi.unstubAllGlobals();
});

it('hands its worker on only when everything was answered, and nothing more can be asked of the old bench', async () => {
  vi.stubGlobal('Worker', WorkerHere);
  const first = openBench();
  open = first;
  const answer = first.bench.refusal('{}', 'one');
  expect(first.next()).toBeUndefined();
  await expect(answer).resolves.toBe('one');
  const second = first.next();
  open = second;
  const posted = WorkerHere.posted;
  void first.bench.refusal('{}', 'late');
  expect(WorkerHere.posted).toBe(posted);
  await expect(second?.bench.refusal('{}', 'two')).resolves.toBe('two');
  expect(WorkerHere.ended).toBe(0);
});

it('knows that a bench is at work until it has answered or is closed', async () => {
  vi.stubGlobal('Worker', WorkerHere);
  const [left, right] = [openBench(), openBench()];
  open = right;
  const answer = left.bench.refusal('{}', 'one');
  void right.bench.refusal('{}', 'never heard').catch(() => undefined);
  expect(benchAtWork()).toBe(true);
  right.close();
  expect(benchAtWork()).toBe(true);
  await answer;
  expect(benchAtWork()).toBe(false);
  left.close();
  expect(benchAtWork()).toBe(false);
});
