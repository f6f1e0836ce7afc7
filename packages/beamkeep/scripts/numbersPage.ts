import { collected, type Entry } from '../src/numbers/collected.js';
import type { Sourced } from '../src/numbers/sourced.js';

/*
 * The page of numbers, drawn from the table in src/numbers. It is generated: change the table, then run
 * writeNumbersPage.mjs. A test compares the page with the table.
 */

const head = `# Where the numbers come from

Every constant of the outside world that beamkeep uses or checks itself against, with its unit and its source. This page is generated from
\`packages/beamkeep/src/numbers\`; change the table there, then run \`node packages/beamkeep/scripts/writeNumbersPage.mjs\`.

How far a number can be trusted:

| word | meaning |
|---|---|
| read | seen in a text at hand, often an excerpt; clause and edition where the excerpt shows them |
| from memory | believed to stand in the source named, not seen again: check it before you rely on it |
| derived | follows from definitions or from other entries |
| common practice | a habit of the trade without a source |
| own choice | beamkeep's own decision |

\`±\` is the uncertainty as the source states it; a range is what sources or cases span. The local code and the
maker's instructions go before every figure of this page.
`;

/** Seven significant digits at most, without trailing zeros. */
const shown = (value: number): string => String(Number(value.toPrecision(7)));

const cell = (text: string): string => text.replaceAll('|', '\\|');

function valueCell({ value, spread, range }: Sourced): string {
  const uncertainty = spread === undefined ? '' : ` ± ${shown(spread)}`;
  const span = range === undefined ? '' : ` (${shown(range[0])} to ${shown(range[1])})`;
  return `${shown(value)}${uncertainty}${span}`;
}

function sourceCell(figure: Sourced): string {
  const clause = 'clause' in figure && figure.clause !== undefined ? `, ${figure.clause}` : '';
  const edition =
    'edition' in figure && figure.edition !== undefined && !figure.source.includes(figure.edition)
      ? `, ${figure.edition}`
      : '';
  const note = figure.note === undefined ? '' : `. Note: ${figure.note}`;
  return cell(`${figure.source}${clause}${edition}${note}`);
}

const line = ({ name, figure }: Entry): string =>
  `| \`${name}\` | ${valueCell(figure)} | ${cell(figure.unit)} | ${sourceCell(figure)} | ${figure.seen} |`;

/** The whole page, as Markdown. */
export function numbersPage(): string {
  const topics = [...new Set(collected.map(({ topic }) => topic))];
  const tables = topics.map((topic) => {
    const lines = collected.filter((entry) => entry.topic === topic).map(line);
    return `## ${topic}\n\n| name | value | unit | source | seen |\n|---|---|---|---|---|\n${lines.join('\n')}\n`;
  });
  return [head, ...tables].join('\n');
}

/** The same for programs. */
export const numbersJson = (): string =>
  `${JSON.stringify(
    {
      format: 'beamkeep-numbers/1',
      numbers: collected.map(({ topic, name, figure }) => ({ topic, name, ...figure })),
    },
    null,
    1,
  )}\n`;
