import { plain } from './plain.js';
import { wrap } from './wrap.js';

/** Warnings, one paragraph each, with the clause that says so; nothing where there are none. */
export const warningsText = (
  warnings: readonly { readonly words: string; readonly clause?: string }[],
  width: number,
): string[] =>
  warnings.length === 0
    ? []
    : [
        [
          'Warnings',
          ...warnings.map(({ words, clause }) =>
            wrap(plain(clause === undefined ? words : `${words} [${clause}]`), width, '  - ', '    '),
          ),
        ].join('\n'),
      ];

/** What an answer leaves out, and who decides. */
export const limitsText = (
  { leftOut, decides }: { readonly leftOut: readonly string[]; readonly decides: string },
  width: number,
): string =>
  ['Left out', ...leftOut.map((words) => wrap(words, width, '  - ', '    ')), wrap(decides, width)].join('\n');
