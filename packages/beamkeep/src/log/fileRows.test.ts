import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { fileRows } from './fileRows.js';
import { noteBook } from './inputNotes.js';
import { timeCell } from './linePlan.js';

const site = parseSite({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 50 }] });

async function* inPieces(text: string, size: number): AsyncGenerator<Uint8Array> {
  const bytes = strToU8(text);
  const shared = new Uint8Array(size);
  for (let from = 0; from < bytes.length; from += size) {
    const piece = bytes.subarray(from, from + size);
    shared.fill(0);
    shared.set(piece);
    yield shared.subarray(0, piece.length);
  }
}
async function read(text: string, size = 64) {
  const notes = noteBook();
  const tally = { lines: 0, dropped: 0 };
  const plan = {
    separator: 44,
    decimalComma: false,
    actions: Int32Array.of(timeCell, 0),
    format: 'unix-seconds' as const,
    absent: [],
  };
  const file = { file: 'a.csv', plan, headerLines: 1, width: 1, absent: Number.NaN, site, notes, plain: true };
  const times: number[] = [];
  let blocks = 0;
  for await (const { time, count } of fileRows(inPieces(text, size), file, tally)) {
    for (const instant of time.subarray(0, count)) times.push(instant);
    blocks++;
  }
  return { times, blocks, tally, notes: notes.list(1) };
}
const lines = (rows: number, order: (row: number) => number = (row) => row): string =>
  Array.from({ length: rows }, (_, row) => `${order(row)},5\n`).join('');

describe('fileRows', () => {
  it.each([1, 7, 64, 100_000])('a buffer of %d bytes may be used again and again', async (size) => {
    const { times, tally } = await read(lines(500), size);
    expect(times).toEqual(Array.from({ length: 500 }, (_, row) => row * 1000));
    expect(tally).toEqual({ lines: 501, dropped: 0 });
  });
  it('a last line without an end counts', async () => expect((await read('1,5\n2,6')).times).toEqual([1000, 2000]));
  it('a long file comes in blocks, each in its place', async () => {
    const { times, blocks } = await read(lines(300_000), 1 << 16);
    expect(blocks).toBeGreaterThan(1);
    expect(times.every((time, row) => time === row * 1000)).toBe(true);
  });
  it('a file in no order at all is held as a whole', async () => {
    const { times } = await read(
      lines(150_000, (row) => (row * 7919) % 150_000),
      1 << 16,
    );
    expect(times.every((time, row) => time === row * 1000)).toBe(true);
  });
});
