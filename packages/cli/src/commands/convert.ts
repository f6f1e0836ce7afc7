import { convert } from 'beamkeep';
import { units } from 'beamkeep/attenuation';
import { UsageError } from 'beamkeep/columns';
import { Command } from 'commander';
import { conversionLine } from '../say/conversion.js';
import { json } from '../say/json.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { required } from './required.js';

interface Options {
  readonly from?: string;
  readonly to?: string;
  readonly path?: string;
  readonly json?: true;
}

/** A number as a person writes it; a percent sign behind it changes nothing. */
function numberOf(text: string, argument: string): number {
  const written = text.replace(/\s*%$/, '').trim();
  const value = written === '' ? Number.NaN : Number(written);
  if (Number.isNaN(value)) {
    const comma = /^[-+]?\d+,\d+$/.test(written) ? '; the decimal sign here is a point' : '';
    throw new UsageError(`${argument}: "${text}" is not a number${comma}`);
  }
  return value;
}

/** `convert`: the same smoke in another unit. */
export const convertCommand: CommandMaker = (io, done) =>
  new Command('convert')
    .summary('convert an amount of smoke between units of obscuration')
    .description('Converts an amount of smoke between units of obscuration.')
    .argument('<value>', 'a number, or "infinite"')
    .option('--from <unit>', 'required: unit of the value')
    .option('--to <unit>', 'required: unit wanted')
    .option(
      '--path <metres>',
      'length of smoke that the light crosses: twice the separation for a reflective beam; ' +
        'not needed between two units of the whole path, or two of a length',
    )
    .option('--json', 'print question and answer as JSON')
    .addHelpText(
      'after',
      `
${wrap(`Units: ${units.join(', ')}`, 80, '', '  ')}

Examples:
  beamkeep convert 35 --from percent --to decibels-per-metre --path 124
  beamkeep convert 1 --from percent-per-foot --to percent-per-metre`,
    )
    .action((value: string, { from, to, path, json: asJson }: Options) => {
      const conversion = convert({
        value: value === 'infinite' ? value : numberOf(value, 'VALUE'),
        from: required(from, '--from <unit>'),
        to: required(to, '--to <unit>'),
        pathMetres: path === undefined ? undefined : numberOf(path, '--path'),
      });
      io.stdout.write(asJson ? json(conversion) : `${conversionLine(conversion)}\n`);
      done(0);
    });
