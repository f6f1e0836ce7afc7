import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { freshSheet } from '../sheet/sheet.js';
import { sheetText } from '../sheet/sheetFile.js';
import { openedFile } from './opened.js';
import { isZipped, packedPiece } from './pieces.js';

const sheet = freshSheet({ from: 'shelf', key: 'k', names: ['hall.csv'] });
const log = Array.from({ length: 20_000 }, (_, row) => `2027-06-01T00:00:${row % 60}Z,${row % 97}\n`).join('');

/** A sheet file with one log in it. */
const sheetWith = (entry: object): Blob =>
  new Blob([JSON.stringify({ ...JSON.parse(sheetText(sheet)), shelf: { k: [{ name: 'hall.csv', ...entry }] } })]);

const opened = async (file: Blob): Promise<string> => {
  const { sheet: read, shelf } = await openedFile(file, () => undefined);
  expect(read).toEqual(sheet);
  const [[key, [first]] = ['', []]] = shelf;
  expect([key, first?.name]).toEqual(['k', 'hall.csv']);
  return first ? first.blob.text() : '';
};

/** A text as base64, in pieces of some length. */
async function inPieces(text: string, length: number, zip: boolean): Promise<string[]> {
  const file = new Blob([text]);
  const pieces: string[] = [];
  for (let from = 0; from < file.size; from += length)
    pieces.push(await (await packedPiece(file.slice(from, from + length), zip)).text());
  return pieces;
}

describe('opened', () => {
  it.each([true, false])('a log packed in pieces comes out as it went in, zipped on the way: %s', async (zipped) => {
    const base64 = await inPieces(log, 100_001, zipped);
    expect(base64.length).toBeGreaterThan(2);
    expect((await opened(sheetWith({ zipped, base64 }))) === log).toBe(true);
  });

  it('a file of an older version holds a log as one text', async () => {
    const base64 = gzipSync(log).toString('base64');
    expect((await opened(sheetWith({ zipped: true, base64 }))) === log).toBe(true);
    expect((await opened(sheetWith({ base64: Buffer.from(log).toString('base64') }))) === log).toBe(true);
  });

  it('an empty log', async () => {
    expect(await opened(sheetWith({ zipped: true, base64: [] }))).toBe('');
  });

  it.each([
    ['no base64', ['not base64!']],
    ['no gzip', ['YWJj']],
    ['cut off', [gzipSync(log).subarray(0, 900).toString('base64')]],
  ])('says which log is damaged: %s', async (_how, base64) => {
    await expect(opened(sheetWith({ zipped: true, base64 }))).rejects.toThrow(/the log "hall\.csv" in it is damaged/);
  });

  it('says what is wrong with a file that is none', async () => {
    await expect(opened(new Blob(['time,b1\n']))).rejects.toThrow(/not complete JSON/);
    await expect(opened(sheetWith({ base64: 5 }))).rejects.toThrow(/shelf\.k\.0\.base64/);
  });

  it('tells how far it has come, up to the whole', async () => {
    const told: number[] = [];
    await openedFile(sheetWith({ zipped: true, base64: await inPieces(log, 100_001, true) }), (share) =>
      told.push(share),
    );
    expect(told.toSorted((a, b) => a - b)).toEqual(told);
    expect(told.at(-1)).toBeGreaterThan(0.9);
    expect(told.at(-1)).toBeLessThanOrEqual(1);
  });
});

describe('whether to zip a file gains something', () => {
  it('not with gzip, zip and reduced logs', async () => {
    const zipped = (start: BlobPart): Promise<boolean> => isZipped(new Blob([start, 'more']));
    expect(await Promise.all(['time,b1', '', 'P'].map(zipped))).toEqual([false, false, false]);
    expect(await Promise.all([Uint8Array.of(0x1f, 0x8b), 'PK', 'beamkeep-records/1'].map(zipped))).toEqual([
      true,
      true,
      true,
    ]);
  });
});
