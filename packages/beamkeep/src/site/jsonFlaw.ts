/*
 * The first thing in a text that JSON does not allow, and where. JSON.parse says that something is wrong, but where it
 * is each engine words differently or not at all; and of a key given twice it keeps the last without a word.
 *
 * One pass without recursion: a stack of the objects and lists that are open, and what may come next.
 *
 *     value   ->  { [ or a plain value          key    ->  a text, which must be new in its object
 *     colon   ->  :                             after  ->  , or the end of what is open
 */

/** What is wrong, and the place of the character where it shows [characters from the start]. */
export type JsonFlaw =
  | { readonly offset: number; readonly kind: 'unexpected' | 'early end' | 'control character' | 'too deep' }
  | { readonly offset: number; readonly kind: 'doubled key'; readonly key: string };

/** Objects and lists within each other; a site file has 4. */
const deepest = 1000;
const space = /[ \t\n\r]*/y;
const plainValue = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const escaped = /\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;

/** Keys of an open object so far; undefined of an open list. */
type Open = Set<string> | undefined;

/**
 * What keeps a text from being JSON, or from meaning one thing only.
 *
 * @returns undefined where it is JSON without a key given twice, nested within reason
 * @example jsonFlaw('{"a": 1,}') // { offset: 8, kind: 'unexpected' }
 */
export function jsonFlaw(json: string): JsonFlaw | undefined {
  const open: Open[] = [];
  let wanted: 'value' | 'value or end' | 'key' | 'key or end' | 'colon' | 'after' = 'value';
  let at = 0;
  for (;;) {
    at = behind(space, json, at) ?? at;
    const sign = json.charAt(at);
    const keys = open.at(-1);
    const closes = open.length > 0 && sign === (keys ? '}' : ']');
    if (wanted === 'after' && open.length === 0) return at === json.length ? undefined : flawAt(json, at);
    if (closes && (wanted === 'after' || wanted.endsWith('or end'))) {
      open.pop();
      at++;
      wanted = 'after';
    } else if (wanted === 'after' || wanted === 'colon') {
      if (sign !== (wanted === 'after' ? ',' : ':')) return flawAt(json, at);
      at++;
      wanted = wanted === 'after' && keys ? 'key' : 'value';
    } else if (wanted.startsWith('key') || sign === '"') {
      const text = sign === '"' ? textFrom(json, at) : { whole: false, end: at };
      if (!text.whole) return flawAt(json, text.end);
      if (wanted.startsWith('key')) {
        const key: string = JSON.parse(json.slice(at, text.end));
        if (keys?.has(key)) return { offset: at, kind: 'doubled key', key };
        keys?.add(key);
      }
      at = text.end;
      wanted = wanted.startsWith('key') ? 'colon' : 'after';
    } else if (sign === '{' || sign === '[') {
      if (open.length === deepest) return { offset: at, kind: 'too deep' };
      open.push(sign === '{' ? new Set() : undefined);
      at++;
      wanted = sign === '{' ? 'key or end' : 'value or end';
    } else {
      const end = behind(plainValue, json, at);
      if (end === undefined) return flawAt(json, at);
      at = end;
      wanted = 'after';
    }
  }
}

function flawAt(json: string, offset: number): JsonFlaw {
  if (offset >= json.length) return { offset: json.length, kind: 'early end' };
  return { offset, kind: json.charAt(offset) < ' ' ? 'control character' : 'unexpected' };
}

/** Place behind what matches here; undefined where it does not. */
function behind(what: RegExp, json: string, at: number): number | undefined {
  what.lastIndex = at;
  return what.test(json) ? what.lastIndex : undefined;
}

/** Place behind a quoted text, or where it goes wrong. */
function textFrom(json: string, from: number): { readonly whole: boolean; readonly end: number } {
  let at = from + 1;
  while (at < json.length) {
    const sign = json.charAt(at);
    if (sign === '"') return { whole: true, end: at + 1 };
    const next = sign === '\\' ? behind(escaped, json, at) : at + 1;
    if (next === undefined || sign < ' ') return { whole: false, end: at };
    at = next;
  }
  return { whole: false, end: at };
}
