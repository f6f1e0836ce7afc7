import { type ObjectNode, parse } from '@humanwhocodes/momoa';
import { UsageError } from '../columns/index.js';
import { quoted } from './quoted.js';

/** A site file of some hundred beams has some hundred kilobytes; a longer text is something else. */
const longestText = 4_000_000;

/**
 * The value that a JSON text holds, with errors that name line and column.
 *
 * JSON.parse reads; a second reader that keeps positions finds the place of an error and keys given twice, of which
 * JSON.parse would silently keep the last.
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
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    throw new UsageError(`${fileName}${placeOfError(json)}`);
  }
  const doubled = doubledKey(json);
  if (doubled)
    throw new UsageError(
      `${fileName}:${doubled.line}: the key ${quoted(doubled.key)} is given twice: keep one of them.`,
    );
  return value;
}

/** ":line:column: what is wrong" of a text that is not JSON. */
function placeOfError(json: string): string {
  try {
    parse(json, { mode: 'json' });
  } catch (e) {
    if (isPlaced(e)) {
      const found =
        json.slice(e.offset).trimStart() === ''
          ? 'the file ends too early'
          : `unexpected ${quoted(json.charAt(e.offset))}`;
      const hint = hintFor(json, e.offset);
      return `:${e.line}:${e.column}: not JSON: ${found}${hint}.`;
    }
    if (e instanceof RangeError) return ': not JSON, and nested far deeper than a site file.';
  }
  return ': not JSON: a text in it holds a line break or another control character.';
}

const isPlaced = (e: unknown): e is { line: number; column: number; offset: number } =>
  typeof e === 'object' && e !== null && 'line' in e && 'column' in e && 'offset' in e;

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

/** The first key that one object holds twice. */
function doubledKey(json: string): { key: string; line: number } | undefined {
  try {
    const pending = [parse(json, { mode: 'json' }).body];
    for (let node = pending.pop(); node; node = pending.pop()) {
      if (node.type === 'Object') {
        const doubled = doubledIn(node);
        if (doubled) return doubled;
        pending.push(...node.members.map((member) => member.value));
      } else if (node.type === 'Array') pending.push(...node.elements.map((element) => element.value));
    }
  } catch (e) {
    if (!(e instanceof RangeError)) throw e; // too deep for this reader: the checks that follow will refuse it
  }
  return undefined;
}

function doubledIn(object: ObjectNode): { key: string; line: number } | undefined {
  const seen = new Set<string>();
  for (const { name } of object.members) {
    const key = name.type === 'String' ? name.value : name.name;
    if (seen.has(key)) return { key, line: name.loc.start.line };
    seen.add(key);
  }
  return undefined;
}
