import { quoted } from 'beamkeep/site';
import * as v from 'valibot';
import { type Cell, type Kind, type Sheet, settingsOf } from './sheet.js';

/*
 * One sheet as one JSON file. Its version stands first; a file of another version, or a damaged one, is refused in
 * words that say what is wrong and where, and nothing that is open is touched.
 *
 *     { "format": "beamkeep-sheet/1", "title": …, "cells": [ { "id", "kind", "folded", "settings" } … ],
 *       "shelf": { KEY: [ { "name", "zipped", "base64": [ … ] } … ] } }
 *
 * `shelf` holds the log files themselves, as they were dropped, for whoever chose to save them along, or the reduced
 * log in one file. `base64` is a file in pieces, one after the other; older files hold it as one text. `zipped` says
 * that this notebook gzipped every piece by itself on the way in: the file comes out as it was. What reads a file from
 * the disk (`packing/`) never makes one text of it: it leaves the logs where they are.
 */

/** The version that this notebook writes. */
export const sheetFormat = 'beamkeep-sheet/1';

/** Files of one log, each as pieces of base64. */
export type Packed = readonly {
  readonly name: string;
  readonly base64: readonly string[];
  readonly zipped: boolean;
}[];

/** A sheet out of a file, and the log files that came with it, by key. */
export interface OpenedSheet {
  readonly sheet: Sheet;
  readonly shelf: Readonly<Record<string, Packed>>;
}

/** Most characters of a refusal: what a damaged file holds is shown, but never all of it. */
const longest = 300;
// Control characters, and marks that turn the direction of writing.
const unreadable = /[\p{Cc}\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/gu;

/** A file that is no sheet; the message says in one short line what is wrong and what to do. */
export class SheetFileError extends Error {
  override readonly name = 'SheetFileError';

  constructor(message: string) {
    const plain = message.replace(unreadable, '\ufffd');
    super(plain.length > longest ? `${plain.slice(0, longest - 1)}…` : plain);
  }
}

const pieces = v.pipe(
  v.union([v.string(), v.array(v.string())]),
  v.transform((text) => (typeof text === 'string' ? [text] : text)),
);

const frame = v.strictObject({
  format: v.string(),
  title: v.string(),
  cells: v.array(v.looseObject({ kind: v.string() })),
  shelf: v.optional(
    v.record(
      v.string(),
      v.array(v.strictObject({ name: v.string(), base64: pieces, zipped: v.optional(v.boolean(), false) })),
    ),
    {},
  ),
});

/** The sheet as the text of a file; the log files are left to `shelf`. */
export function sheetText({ title, cells }: Sheet): string {
  return JSON.stringify({ format: sheetFormat, title, cells }, null, 1);
}

/**
 * A sheet from the text of a file.
 *
 * @throws SheetFileError when the text is not JSON, not a sheet, of a version that this notebook does not know, or
 * damaged; the message names the place
 */
export function openedSheet(text: string): OpenedSheet {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    throw new SheetFileError(`it is not complete JSON (${(error as Error).message})`);
  }
  const format = formatOf(json);
  if (format !== sheetFormat)
    throw new SheetFileError(
      format.startsWith('beamkeep-sheet/')
        ? `it is of version ${quoted(format.slice('beamkeep-sheet/'.length))}, and this notebook knows version 1: open it with a newer notebook`
        : `it does not begin as a worksheet ("format" is ${quoted(format)}, expected "${sheetFormat}")`,
    );
  const { title, cells, shelf } = checked(frame, json, '');
  const read = cells.map((cell, row) => cellFrom(cell, `cells[${row}]`));
  if (new Set(read.map(({ id }) => id)).size < read.length) throw new SheetFileError('two of its cells have one id');
  return { sheet: { title, cells: read }, shelf };
}

function formatOf(json: unknown): string {
  const { format } = (typeof json === 'object' && json !== null ? json : {}) as { format?: unknown };
  return typeof format === 'string' ? format : '';
}

function cellFrom(json: { kind: string }, place: string): Cell {
  if (!isKind(json.kind))
    throw new SheetFileError(`${place} is of a kind that this notebook does not know: ${quoted(json.kind)}`);
  const { kind } = json;
  const cell = checked(
    v.strictObject({ id: v.string(), kind: v.literal(kind), folded: v.boolean(), settings: settingsOf[kind] }),
    json,
    `${place}.`,
  );
  return cell as Cell;
}

const isKind = (word: string): word is Kind => Object.hasOwn(settingsOf, word);

function checked<S extends v.GenericSchema>(schema: S, json: unknown, place: string): v.InferOutput<S> {
  const result = v.safeParse(schema, json);
  if (result.success) return result.output;
  const [issue] = result.issues;
  throw new SheetFileError(`${place}${v.getDotPath(issue) ?? 'the file'}: ${issue.message}`);
}
