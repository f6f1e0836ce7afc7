import * as v from 'valibot';
import { UsageError } from '../../columns/index.js';
import { nearest, quoted, readJson } from '../../site/index.js';

/*
 * Documents of the commissioning day are JSON, checked key by key: an unknown key is an error, since its value would
 * silently be lost. Messages name the file and the place (`steps[2].do`), what was found and what would have been right.
 */

type Schema = v.BaseSchema<unknown, unknown, v.BaseIssue<unknown>>;

/**
 * A document, checked.
 *
 * @param input JSON text, or the value that it holds
 * @param schema what it must be
 * @param fileName named in errors
 * @throws UsageError for text that is not JSON, and for the first value that the schema refuses
 */
export function readDocument<S extends Schema>(input: unknown, schema: S, fileName: string): v.InferOutput<S> {
  const value = typeof input === 'string' ? readJson(input, fileName) : input;
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new UsageError(`${fileName}: the document is ${quoted(value)}: use an object: { ... }`);
  const result = v.safeParse(schema, value, { abortEarly: true });
  if (result.success) return result.output;
  throw new UsageError(`${fileName}: ${complaint(result.issues[0], schema)}`);
}

const placeOf = (path: readonly v.IssuePathItem[]): string =>
  path.reduce(
    (place, { key }) => (typeof key === 'number' ? `${place}[${key}]` : `${place && `${place}.`}${String(key)}`),
    '',
  );

function complaint(issue: v.BaseIssue<unknown>, schema: Schema): string {
  const path = issue.path ?? [];
  const place = placeOf(path) || 'the document';
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    const key = String(path.at(-1)?.key);
    const known = keysOf(schemaAt(schema, path.slice(0, -1)));
    const like = known.find((each) => each.toLowerCase().startsWith(key.toLowerCase())) ?? nearest(key, known);
    const where = placeOf(path.slice(0, -1));
    return `${where && `${where}: `}unknown key ${quoted(key)}${like === undefined ? '' : `: the nearest known key is "${like}"`}`;
  }
  if (issue.received === 'undefined') {
    const wanted = fieldOf(schemaAt(schema, path), 'expects');
    return `${place} is missing${typeof wanted === 'string' ? `: use ${words(wanted)}` : ''}`;
  }
  const demand = issue.message.startsWith('Invalid')
    ? `use ${words(issue.expected ?? 'another value')}`
    : issue.message;
  return `${place} is ${quoted(issue.input)}: ${demand}`;
}

/** What valibot says that it expects, without its signs. */
const words = (expected: string): string =>
  expected
    .replace(/^\((.*)\)$/, '$1')
    .replaceAll(' | ', ', ')
    .replace(/^(string|number|boolean|Object|Array)$/, (kind) => kinds[kind] ?? kind);

const kinds: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  number: 'a number, without quotes',
  boolean: 'true or false',
  Object: 'an object: { ... }',
  Array: 'a list: [ ... ]',
};

/** The schema at a path; undefined beneath a choice of schemas, where the path does not tell which. */
const schemaAt = (schema: Schema, path: readonly v.IssuePathItem[]): unknown =>
  path.reduce<unknown>((here, { key }) => inside(here, key), schema);

const fieldOf = (schema: unknown, field: string): unknown =>
  typeof schema === 'object' && schema !== null ? (schema as Readonly<Record<string, unknown>>)[field] : undefined;

/** What lies within wrappers (optional, nullable, one in the other). */
function unwrapped(schema: unknown): unknown {
  const wrapped = fieldOf(schema, 'wrapped');
  return wrapped === undefined ? schema : unwrapped(wrapped);
}

function inside(schema: unknown, key: unknown): unknown {
  const bare = unwrapped(schema);
  return fieldOf(bare, 'item') ?? fieldOf(fieldOf(bare, 'entries'), String(key));
}

function keysOf(schema: unknown): string[] {
  const bare = unwrapped(schema);
  const entries = fieldOf(bare, 'entries');
  if (typeof entries === 'object' && entries !== null) return Object.keys(entries);
  const options = fieldOf(bare, 'options');
  return Array.isArray(options) ? [...new Set(options.flatMap((option: unknown) => keysOf(option)))] : [];
}
