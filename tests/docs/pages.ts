import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Every page of the project, as the project's own list of files has them. */
export function pages(): string[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '*.md'], {
    cwd: root,
    encoding: 'utf8',
  });
  return listed.split('\n').filter((path) => path !== '');
}

/** A fenced block of a page. */
export interface Block {
  /** Path of the page from the project's folder. */
  readonly page: string;
  /** Line of the opening fence, from 1. */
  readonly line: number;
  /** Word behind the fence: sh, ts, html, json, text; empty where there is none. */
  readonly kind: string;
  readonly text: string;
  /** What it prints: the block of kind `text` that follows with at most a sentence between. */
  readonly printed: Block | undefined;
}

/** The blocks of a page, in order; a `text` block that tells what another prints stands only within that one. */
export function blocksOf(page: string): Block[] {
  const lines = readFileSync(join(root, page), 'utf8').split('\n');
  const found: Block[] = [];
  let fence: { readonly line: number; readonly kind: string } | undefined;
  lines.forEach((line, i) => {
    const [, kind] = /^```(\S*)\s*$/.exec(line) ?? [];
    if (kind === undefined) return;
    if (fence === undefined) fence = { line: i + 1, kind };
    else {
      found.push({ page, ...fence, text: lines.slice(fence.line, i).join('\n'), printed: undefined });
      fence = undefined;
    }
  });
  if (fence) throw new Error(`${page}:${fence.line}: the block is not closed`);
  return found.flatMap((block, i) => {
    if (block.kind === 'text' && runs(found[i - 1])) return [];
    const next = found[i + 1];
    return [{ ...block, printed: runs(block) && next?.kind === 'text' ? next : undefined }];
  });
}

const runs = (block: Block | undefined): boolean => block !== undefined && ['sh', 'ts', 'html'].includes(block.kind);
