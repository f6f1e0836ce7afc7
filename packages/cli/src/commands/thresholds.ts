import { thresholds } from 'beamkeep/commissioning';
import { Command, InvalidArgumentError } from 'commander';
import { readSite } from '../files/readSite.js';
import { thresholdsText } from '../say/commissioning/thresholds.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import type { CommandMaker } from './command.js';
import { required } from './required.js';
import { siteOption } from './shared.js';

interface Options {
  readonly site?: string;
  readonly beam?: string;
  readonly percent?: readonly number[];
  readonly metres?: readonly number[];
  readonly json?: true;
}

/** Numbers above 0 with commas between. */
function numbers(text: string): number[] {
  const list = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  if (!list.every((value) => value > 0 && Number.isFinite(value)))
    throw new InvalidArgumentError('They must be numbers above 0 with commas between.');
  return list;
}

/** `thresholds`: what do these thresholds mean, and are they allowed? */
export const thresholdsCommand: CommandMaker = (io, done) =>
  new Command('thresholds')
    .summary('thresholds in every unit, against standards, by separation, under dirt')
    .description(
      'Tells what the thresholds of a site mean in every unit, against standards, by separation, and under dirt.',
    )
    .addOption(siteOption())
    .option('--beam <id>', 'which beam; all when left out')
    .option('--percent <numbers>', 'thresholds of the table, with commas between', numbers)
    .option('--metres <numbers>', 'separations of the table, with commas between', numbers)
    .option('--json', 'print the answer as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep thresholds --site site.json --beam B1
  beamkeep thresholds --site site.json --percent 25,35,50,65 --metres 20,50,100 --json`,
    )
    .action(async ({ site: path, beam, percent, metres, json: asJson }: Options) => {
      const site = await readSite(required(path, '--site <file>'), io, []);
      const answer = thresholds(site, { beam, thresholds: percent, separations: metres });
      io.stdout.write(asJson ? json(answer) : thresholdsText(answer, look(io)));
      done(0);
    });
