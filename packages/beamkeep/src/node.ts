/*
 * What touches files: the one part of the library that imports Node modules. Logs and site files come from paths here;
 * everything else is the same as in a browser.
 */
import { open, readFile, stat } from 'node:fs/promises';
import { createGunzip } from 'node:zlib';
import { UsageError } from './columns/index.js';
import { damagedGzip, type Gunzip, type LogSource, shownName } from './log/index.js';
import { parseSite, type Site } from './site/index.js';
import { threadedRows } from './threadedRows.js';

/** Bytes read at once. */
const blockBytes = 1 << 19;
/** Zipped bytes given to the unzipper at once, at first: of what damage falls into, nothing is unzipped. */
const firstSliceBytes = 1 << 16;
/** Later it is a whole block, but never more than such a share of what came before. */
const sliceShare = 1 / 16;
/** Bytes unzipped at once: what a block holds, as a rule, since each time that the room is used up the unzipper waits. */
const unzippedBytes = 1 << 21;
/** Bytes that are unzipped ahead of what is being read. */
const aheadBytes = 1 << 22;
/** Unzipped bytes read in one turn of the event loop: so short is the time until the unzipper gets its next block. */
const turnBytes = 1 << 18;

/** Long logs are read on a thread of their own. */
const elsewhere = threadedRows();

/** A log in a file, and how long the file is. */
export interface LogFile extends LogSource {
  /** [bytes, as they lie on the disk]; undefined of standard input and of pipes. */
  readonly size: number | undefined;
}

/**
 * Logs in files, plain or gzipped; a name of `-` stands for standard input. Long ones are read on a thread of their own,
 * where there are two cores or more, with the same result.
 *
 * @param paths names of files
 * @param input standard input, such as `process.stdin`; needed where a name is `-`
 * @throws UsageError for a file that is not there, may not be read or is a folder
 * @example const { records } = await readTraces(await logFiles(['may.csv.gz', 'june.csv']), site);
 */
export async function logFiles(paths: readonly string[], input?: AsyncIterable<Uint8Array>): Promise<LogFile[]> {
  if (paths.filter((path) => path === '-').length > 1) {
    throw new UsageError('standard input ("-") can be read only once');
  }
  return Promise.all(
    paths.map(async (path): Promise<LogFile> => {
      if (path === '-') {
        if (input === undefined) throw new UsageError('there is no standard input to read "-" from');
        return { name: 'standard input', bytes: input, gunzip, size: undefined };
      }
      const found = await told(path, () => stat(path));
      if (found.isDirectory()) throw new UsageError(`${shownName(path)}: this is a folder: name the log files in it`);
      const isFile = found.isFile();
      const size = isFile ? found.size : undefined;
      return { name: path, bytes: fileBytes(path), restarts: isFile, gunzip, elsewhere, size };
    }),
  );
}

/**
 * A site from its file.
 *
 * @throws UsageError where it cannot be read, or for what is wrong in it
 */
export async function siteFile(path: string): Promise<Site> {
  return parseSite(await told(path, () => readFile(path, 'utf8')), path);
}

/** The bytes of a file, read ahead by one block: while one is used up, the next is fetched into another buffer. */
function fileBytes(path: string): AsyncIterable<Uint8Array> {
  return {
    async *[Symbol.asyncIterator]() {
      const file = await told(path, () => open(path));
      try {
        const buffers = [new Uint8Array(blockBytes), new Uint8Array(blockBytes)] as const;
        let turn = 0;
        const fetch = () => {
          const buffer = buffers[turn++ & 1] as Uint8Array;
          const read = told(path, () => file.read(buffer, 0, blockBytes)).then(({ bytesRead }) =>
            buffer.subarray(0, bytesRead),
          );
          read.catch(() => {}); // Told when it is waited for.
          return read;
        };
        let next = fetch();
        for (;;) {
          const block = await next;
          if (block.length === 0) return;
          next = fetch();
          yield block;
        }
      } finally {
        await file.close();
      }
    },
  };
}

/**
 * Unzips on another thread, some way ahead of what is being read, so that the two need not wait for each other block by
 * block. However much a block holds, only so much of it is unzipped before it is read.
 */
const gunzip: Gunzip = async function* gunzip(bytes, onDamage) {
  const unzip = createGunzip({ chunkSize: unzippedBytes });
  const ready: Uint8Array[] = [];
  let ahead = 0;
  let damaged = false;
  let failure: { readonly error: unknown } | undefined;
  const wake = { more: () => {}, room: () => {}, written: () => {} };
  const until = (what: keyof typeof wake) =>
    new Promise<void>((resolve) => {
      wake[what] = resolve;
    });
  unzip.on('data', (chunk: Uint8Array) => {
    ready.push(chunk);
    ahead += chunk.length;
    if (ahead >= aheadBytes) unzip.pause();
    wake.more();
  });
  unzip.on('error', () => {
    damaged = true;
  });
  unzip.on('close', () => {
    for (const act of Object.values(wake)) act();
  });
  const feed = async () => {
    let given = 0;
    for await (const chunk of bytes) {
      for (let from = 0; from < chunk.length; ) {
        // While paused it is given nothing: what it holds back then is never lost to damage in what follows.
        while (ahead >= aheadBytes && !unzip.destroyed) await until('room');
        if (unzip.destroyed) return;
        const slice = chunk.subarray(from, from + Math.max(firstSliceBytes, Math.floor(sliceShare * given)));
        unzip.write(slice, () => wake.written());
        await until('written');
        from += slice.length;
        given += slice.length;
      }
    }
    unzip.end();
  };
  const feeding = feed().catch((error: unknown) => {
    failure = { error };
    unzip.destroy();
  });
  try {
    while (ready.length > 0 || !unzip.closed) {
      const chunk = ready.shift();
      if (chunk === undefined) {
        await until('more');
        continue;
      }
      for (let from = 0; from < chunk.length; from += turnBytes) {
        await new Promise(setImmediate);
        yield chunk.subarray(from, from + turnBytes);
      }
      ahead -= chunk.length;
      if (ahead < aheadBytes) {
        unzip.resume();
        wake.room();
      }
    }
    if (failure !== undefined) throw failure.error;
    if (damaged) onDamage(damagedGzip);
  } finally {
    unzip.destroy();
    await feeding;
  }
};

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EISDIR: 'this is a folder: name a file in it',
  EACCES: 'this user may not read it',
  EPERM: 'this user may not read it',
};

/** What the system says of a file, in words. */
async function told<T>(path: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (!/^E[A-Z]+$/.test(code)) throw error;
    throw new UsageError(`${shownName(path)}: ${reasons[code] ?? `cannot be read (${code})`}`);
  }
}
