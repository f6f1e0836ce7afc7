import { UsageError } from '../columns/index.js';
import { type JsonFlaw, jsonFlaw } from './jsonFlaw.js';
import { quoted } from './quoted.js';

/** A site file of some hundred beams has some hundred kilobytes; a longer text is something else. */
const longestText = 4_000_000;

/**
 * The value that a JSON text holds, with errors that name line and column.
 *
 * A pass of our own (`jsonFlaw`) finds the place of an error, and keys given twice; JSON.parse reads.
 *
 * @param text the whole text; a byte-order mark is left out
 * @param fileName named in errors
 * @throws UsageError for an empty text, a text too long to be a site file, broken JSON, a key given twice
 */
export function readJson(text: string, fileName: string): unknown {
  const json = text.replace(/^\ufeff/, '');
  if (json.trim() === '') throw new UsageError(`${fileName}: the file is empty: a site file is a JSON object.`);
  if (json.length > longestText)
    throw new UsageError(`${fileName}: ${json.length} characters are too many for a site file: is this the log?`);
  const flaw = jsonFlaw(json);
  if (flaw) throw new UsageError(`${fileName}${flawInWords(json, flaw)}`);
  return JSON.parse(json);
}

/** ":line:column: what is wrong". */
function flawInWords(json: string, flaw: JsonFlaw): string {
  if (flaw.kind === 'too deep') return ': it is nested far deeper than a site file.';
  const before = json.slice(0, flaw.offset).split('\n');
  const line = before.length;
  if (flaw.kind === 'doubled key') return `:${line}: the key ${quoted(flaw.key)} is given twice: keep one of them.`;
  const column = (before.at(-1)?.length ?? 0) + 1;
  return `:${line}:${column}: not JSON: ${found(json, flaw)}.`;
}

function found(json: string, { kind, offset }: JsonFlaw): string {
  if (kind === 'early end') return 'the file ends too early';
  if (kind === 'control character') return 'a text in it holds a line break or another control character';
  return `unexpected ${quoted(json.charAt(offset))}${hintFor(json, offset)}`;
}

/** What usually was meant, by what stands before and at the error. */
function hintFor(json: string, offset: number): string {
  const before = json.slice(0, offset).trimEnd().slice(-1);
  const at = json.charAt(offset);
  if (before === ',' && (at === '}' || at === ']')) return ' (the comma before it is one too many)';
  if (at === '"') return ' (is a comma missing before it?)';
  if (at === "'") return ' (texts stand in double quotes)';
  if (at === '/' || at === '#') return ' (JSON has no comments)';
  if (offset === 0) return ' (a site file is a JSON object and begins with "{")';
  return '';
}
