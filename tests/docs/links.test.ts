import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pages, root } from './pages.js';

/** A page without what stands in blocks and in code. */
const prose = (page: string): string =>
  readFileSync(join(root, page), 'utf8')
    .replace(/^```[\s\S]*?^```/gm, '')
    .replace(/`[^`\n]*`/g, '');

/** Names that a heading can be linked by. */
function anchors(page: string): string[] {
  const headings = [...prose(page).matchAll(/^#+ (.+)$/gm)].map(([, heading]) => heading ?? '');
  const named = [...prose(page).matchAll(/<a (?:id|name)="([^"]+)"/g)].map(([, name]) => name ?? '');
  return [
    ...named,
    ...headings.map((heading) =>
      heading
        .toLowerCase()
        .replace(/[^\p{L}\p{N}\s_-]/gu, '')
        .trim()
        .replace(/\s/g, '-'),
    ),
  ];
}

/** What keeps a link of a page from working. */
function flaw(page: string, target: string): string | undefined {
  if (/^https?:/.test(target)) return undefined;
  const [path = '', anchor] = target.split('#');
  const file = path === '' ? page : normalize(join(dirname(page), decodeURIComponent(path)));
  if (!existsSync(join(root, file))) return 'no such file';
  if (anchor === undefined) return undefined;
  if (statSync(join(root, file)).isDirectory()) return 'a folder has no headings';
  return anchors(file).includes(anchor) ? undefined : 'no such heading';
}

describe('links', () => {
  it.each(pages())('of %s lead somewhere', (page) => {
    const targets = [...prose(page).matchAll(/\]\(<?([^)\s>]+)>?(?: "[^"]*")?\)|<img [^>]*src="([^"]+)"/g)];
    const broken = targets
      .map(([, link, picture]) => link ?? picture ?? '')
      .map((target) => [target, flaw(page, target)] as const)
      .filter(([, what]) => what !== undefined);
    expect(broken).toEqual([]);
  });

  it('name scripts that exist', () => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    const named = ['README.md', 'DEVELOPERS.md'].flatMap((page) =>
      [...readFileSync(join(root, page), 'utf8').matchAll(/npm (?:run ([a-z:]+)|(start|test)\b)/g)].map(
        ([, script, short]) => script ?? short ?? '',
      ),
    );
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
  });
});
