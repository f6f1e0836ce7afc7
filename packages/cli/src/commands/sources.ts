import { UsageError } from 'beamkeep/columns';
import { Command } from 'commander';
import table from '../../../beamkeep/docs/numbers.json' with { type: 'json' };
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { plain } from '../say/plain.js';
import { type Entry, sourcesText } from '../say/sources.js';

import type { CommandMaker } from './command.js';

/** The table of the library's constants, which a test there holds to the code. */
const entries = table.numbers as readonly Entry[];

/** `numbers`: where does this number come from? */
export const sourcesCommand: CommandMaker = (io, done) =>
  new Command('numbers')
    .summary('tell where the numbers come from: value, source, clause, edition')
    .description(
      'Tells every constant that beamkeep uses: its value, its source, and whether that was read or remembered.',
    )
    .argument('[words...]', 'only those that hold all these words, in name, topic, unit or source')
    .option('--json', 'print them as JSON')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep numbers
  beamkeep numbers EN 54-12
  beamkeep numbers soot yield --json`,
    )
    .action((words: readonly string[], { json: asJson }: { readonly json?: true }) => {
      const wanted = words.map((word) => word.toLowerCase());
      const found = entries.filter((entry) => {
        const text = JSON.stringify(entry).toLowerCase();
        return wanted.every((word) => text.includes(word));
      });
      if (found.length === 0)
        throw new UsageError(
          `numbers: no constant holds ${words.map((word) => `"${plain(word, 60)}"`).join(' and ')}: ` +
            'leave words out, or see them all with "beamkeep numbers"',
        );
      io.stdout.write(
        asJson
          ? json({
              format: 'beamkeep-numbers/1',
              numbers: found,
            })
          : `${sourcesText(found, look(io))}\n`,
      );
      done(0);
    });
