import { packageOf, roomOf, type SourceFile } from './imports.js';
import { questionRow, rooms } from './rooms.js';

const begins = '<!-- drawn from the imports: begin -->';
const ends = '<!-- drawn from the imports: end -->';

const sorted = (names: Iterable<string>, order: readonly string[] = []): string[] =>
  [...new Set(names)].sort((a, b) => order.indexOf(a) - order.indexOf(b) || a.localeCompare(b));

/** The picture and the table of the rooms, as the imports are. */
export function drawing(files: readonly SourceFile[]): string {
  const order = rooms.map(({ name }) => name);
  const questions = files.filter(({ path }) => roomOf(path) === undefined);
  const rows = [...new Set(rooms.map(({ row }) => row))].sort((a, b) => b - a);
  const picture = [
    `${questionRow + 1}   packages/cli   notebook`,
    `${questionRow}   ${questions.map(({ path }) => path).join('   ')}`,
    ...rows.map(
      (row) =>
        `${row}   ${rooms
          .filter((room) => room.row === row)
          .map(({ name }) => name)
          .join('   ')}`,
    ),
  ];
  const table = rooms.map(({ name, holds }) => {
    const own = files.filter(({ path }) => roomOf(path) === name);
    const others = own.flatMap((file) => file.files).flatMap((path) => roomOf(path) ?? []);
    const packages = own.flatMap((file) => file.packages).map(packageOf);
    return `| \`${name}\` | ${holds} | ${sorted(
      others.filter((other) => other !== name),
      order,
    ).join(', ')} | ${sorted(packages).join(', ')} |`;
  });
  return [
    '```',
    ...picture,
    '```',
    '',
    '| room | holds | imports from | packages |',
    '|---|---|---|---|',
    ...table,
  ].join('\n');
}

/**
 * A page with its drawing made anew.
 *
 * @throws Error where the page has no place for it
 */
export function redrawn(page: string, files: readonly SourceFile[]): string {
  const [from, to] = [page.indexOf(begins), page.indexOf(ends)];
  if (from < 0 || to < from) throw new Error(`the page must hold "${begins}" and, below it, "${ends}"`);
  return `${page.slice(0, from)}${begins}\n\n${drawing(files)}\n\n${page.slice(to)}`;
}
