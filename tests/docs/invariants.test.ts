import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './pages.js';

/** Rows of the page: the name of a test, and its file. */
const rows = [
  ...readFileSync(join(root, 'tests/invariants.md'), 'utf8').matchAll(/\| `(.+)` \| `([\w./]+\.test\.tsx?)` \|$/gm),
].map(([, test = '', file = '']) => [test, file] as const);

describe('the page of invariants', () => {
  it('names a test for every line', () => {
    const lines = readFileSync(join(root, 'tests/invariants.md'), 'utf8').match(/^\| (?!always|-)/gm);
    expect(rows.length).toBe(lines?.length);
  });
  it.each(rows)('%s: is a test of %s', (test, file) =>
    expect(readFileSync(join(root, file), 'utf8')).toContain(`'${test}'`),
  );
});
