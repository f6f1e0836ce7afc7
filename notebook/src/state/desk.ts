import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { proxy, type Remote } from 'comlink';
import type { Bench } from '../bench/bench.js';
import { type OpenBench, openBench } from '../bench/openBench.js';
import type { BeamSignalled, LogFile, Progress, Reading, SmallFile, Window } from '../bench/reading.js';
import { filled } from '../parts/InTurn.js';
import type { Cell, Settings } from '../sheet/sheet.js';
import { demo } from './demo.js';
import { fromShelf } from './shelf.js';

/*
 * A desk is where one log cell's log lies open: how far the reading has come, what was read, and what the plots of
 * this log share: the window, the cursor and the chosen finding. None of it belongs to the saved sheet.
 */

/** How it stands with a log. */
export type LogState =
  | { readonly is: 'nothing' }
  | { readonly is: 'unsited'; readonly files: readonly LogFile[] }
  | { readonly is: 'reading'; readonly progress: Progress | null }
  | { readonly is: 'read'; readonly reading: Reading; readonly bench: Remote<Bench> }
  | { readonly is: 'failed'; readonly message: string; readonly ours: boolean }
  | { readonly is: 'stopped' }
  | { readonly is: 'lost'; readonly names: readonly string[] };

/** The desk of one log cell. */
export interface Desk {
  /** The log cell's id. */
  readonly cell: string;
  readonly state: ReadonlySignal<LogState>;
  /** The stretch in sight; null is the whole log. */
  readonly window: Signal<Window | null>;
  /** The instant under the pointer. */
  readonly cursor: Signal<number | null>;
  /** The instant last clicked in the plots. */
  readonly asked: Signal<number | null>;
  /** Number of the chosen finding. */
  readonly chosen: Signal<number | null>;
  /** What the equipment would have signalled, once that was asked for and is worked out; null until then. */
  readonly signalled: ReadonlySignal<readonly BeamSignalled[] | null>;
  /** Asks for that, once for a log, after everything that the cells ask for as they are filled: it takes a while. */
  askSignalled(): void;
  /** Reads what the settings name, unless that is what lies here already. */
  follow(settings: Settings['log']): void;
  /** Reads the same again. */
  again(): void;
  /** Stops the reading. */
  stop(): void;
  /** Clears the desk for good. */
  close(): void;
}

const desks = new Map<string, Desk>();

/** The desk of a log cell. */
export function deskOf(cell: string): Desk {
  const known = desks.get(cell);
  if (known) return known;
  const fresh = newDesk(cell);
  desks.set(cell, fresh);
  return fresh;
}

/** Lets every log cell's desk follow its settings, and clears the desks of cells that are gone. */
export function followSheet(cells: readonly Cell[]): void {
  const logs = cells.filter((cell) => cell.kind === 'log');
  for (const { id, settings } of logs) deskOf(id).follow(settings);
  for (const [id, desk] of desks)
    if (!logs.some((cell) => cell.id === id)) {
      desk.close();
      desks.delete(id);
    }
}

function newDesk(cell: string): Desk {
  const state = signal<LogState>({ is: 'nothing' });
  const window = signal<Window | null>(null);
  const cursor = signal<number | null>(null);
  const asked = signal<number | null>(null);
  const chosen = signal<number | null>(null);
  const signalled = signal<readonly BeamSignalled[] | null>(null);
  let open: OpenBench | undefined;
  let followed: Settings['log'] | undefined;
  /** Counts the readings, so that the answer of one that was given up is not taken for that of the next. */
  let turn = 0;

  /** Ends the worker. */
  function end(): void {
    open?.close();
    open = undefined;
  }

  function clear(): number {
    window.value = null;
    cursor.value = null;
    asked.value = null;
    chosen.value = null;
    signalled.value = null;
    turn++;
    return turn;
  }

  async function start(settings: Settings['log']): Promise<void> {
    const { is } = state.value;
    const warm = is === 'read' || is === 'unsited' ? open?.next() : undefined;
    if (!warm) end();
    open = warm;
    const mine = clear();
    const { log, site, events } = settings;
    if (log.from === 'nothing') {
      end();
      state.value = { is: 'nothing' };
      return;
    }
    state.value = { is: 'reading', progress: null };
    try {
      const whole = log.from === 'demo' ? await demo() : undefined;
      const files = whole?.files ?? (log.from === 'shelf' ? await fromShelf(log.key) : undefined);
      if (mine !== turn) return;
      const sited = site ?? whole?.site;
      const listed = events ?? (site ? null : (whole?.events ?? null));
      if (!files) {
        end();
        state.value = { is: 'lost', names: log.from === 'shelf' ? log.names : [] };
      } else if (!sited) state.value = { is: 'unsited', files };
      else await read(mine, files, sited, listed);
    } catch (error) {
      if (mine !== turn) return;
      end();
      state.value = failure(error);
    }
  }

  async function read(
    mine: number,
    files: readonly LogFile[],
    site: SmallFile,
    events: SmallFile | null,
  ): Promise<void> {
    const here = open ?? openBench();
    open = here;
    const tell = (progress: Progress): void => {
      if (mine === turn && state.value.is === 'reading') state.value = { is: 'reading', progress };
    };
    const reading = await here.bench.read(files, site, events, proxy(tell));
    if (mine !== turn) return;
    state.value = { is: 'read', reading, bench: here.bench };
  }

  /** The reading for which the signals were asked last. */
  let askedIn = -1;

  async function askSignalled(): Promise<void> {
    const mine = turn;
    if (!open || askedIn === mine) return;
    askedIn = mine;
    await filled();
    if (mine !== turn) return;
    const response = await open.bench.response();
    if (mine === turn) signalled.value = response;
  }

  return {
    cell,
    state,
    window,
    cursor,
    asked,
    chosen,
    signalled,
    askSignalled() {
      if (state.value.is === 'read') void askSignalled().catch((error) => (state.value = failure(error)));
    },
    follow(settings) {
      if (followed && same(followed, settings)) return;
      followed = settings;
      void start(settings);
    },
    again() {
      if (followed) void start(followed);
    },
    stop() {
      if (state.value.is !== 'reading') return;
      end();
      clear();
      state.value = { is: 'stopped' };
    },
    close() {
      end();
      clear();
      followed = undefined;
      state.value = { is: 'nothing' };
    },
  };
}

const same = (a: Settings['log'], b: Settings['log']): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** What a person can mend keeps its words; anything else is our own fault and says so. */
function failure(error: unknown): LogState {
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  return { is: 'failed', message, ours: name !== 'UsageError' };
}
