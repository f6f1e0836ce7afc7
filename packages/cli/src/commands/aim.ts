import { UsageError } from 'beamkeep';
import { type AngleUnit, aim, angleUnits, textTable } from 'beamkeep/commissioning';
import { deflectionLimits, thermalExpansion } from 'beamkeep/numbers';
import { Command, InvalidArgumentError, Option } from 'commander';
import { readSite } from '../files/readSite.js';
import { readSmall } from '../files/readSmall.js';
import { aimText } from '../say/commissioning/aim.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { number } from './numbers.js';
import { required } from './required.js';
import { siteOption } from './shared.js';
import { wordList } from './wordList.js';

interface Options {
  readonly site?: string;
  readonly beam?: string;
  readonly left?: readonly number[];
  readonly unit?: AngleUnit;
  readonly level?: string;
  readonly angles?: readonly string[];
  readonly span?: number;
  readonly roof?: keyof typeof deflectionLimits;
  readonly frame?: number;
  readonly material?: keyof typeof thermalExpansion;
  readonly depth?: number;
  readonly gradient?: number;
  readonly member?: number;
  readonly warming?: number;
  readonly json?: true;
}

/** Angles with a comma between. */
function angleList(text: string): number[] {
  const angles = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  if (!angles.every(Number.isFinite))
    throw new InvalidArgumentError('It must be one angle, or two with a comma between.');
  return angles;
}

const notes = wrap(
  'A scan is a CSV with a header: one or two columns of angles of the head, and the reading at each place. The roof, ' +
    'the frame and the member say how far the structure may move; what is left out is not computed.',
  80,
);

/** `aim`: is it on the peak, on the flank, or on a stray reflection? */
export const aimCommand: CommandMaker = (io, done) =>
  new Command('aim')
    .summary('fit the lobe of an aim scan: offset, loss, margin, stray reflections')
    .description('Tells from an aim scan whether a head stands on its peak, and how far it may turn before it alarms.')
    .argument('<scan>', 'CSV of angles and readings; "-" is standard input')
    .addOption(siteOption())
    .option('--beam <id>', 'which beam, where the site has several')
    .option('--left <angles>', 'where the head was left: one angle, or two with a comma between', angleList)
    .addOption(new Option('--unit <word>', 'unit of the angles').choices(angleUnits).default('degrees'))
    .option('--level <column>', 'column of the readings, where its name does not tell')
    .option('--angles <columns>', 'columns of the angles, where their names do not tell', wordList)
    .option('--span <metres>', 'span of the roof member that the head hangs on', number)
    .addOption(new Option('--roof <word>', 'its limit of deflection').choices(Object.keys(deflectionLimits)))
    .option('--frame <metres>', 'height of the frame whose column holds the head', number)
    .addOption(new Option('--material <word>', 'of the member').choices(Object.keys(thermalExpansion)))
    .option('--depth <metres>', 'depth of the roof member; with --gradient: its thermal bow', number)
    .option('--gradient <kelvin>', 'how much warmer one face of it gets than the other', number)
    .option('--member <metres>', 'length of a member whose growth shifts one end sideways', number)
    .option('--warming <kelvin>', 'how much it warms', number)
    .option('--json', 'print the answer as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep aim scan-b1.csv --site site.json --beam B1 --left 0.5
  beamkeep aim scan-b2.csv --site site.json --beam B2 --left 0.05,-0.05 --span 18 --frame 9.4
  beamkeep aim scan-b1.csv --site site.json --beam B1 --json

${notes}`,
    )
    .action(async (path: string, options: Options) => {
      together(options);
      const site = await readSite(required(options.site, '--site <file>'), io, [path]);
      const answer = aim(textTable(await readSmall(path, io), path), site, {
        beam: options.beam,
        left: options.left,
        angleUnit: options.unit,
        level: options.level,
        angles: options.angles,
        structure: {
          spanMetres: options.span,
          roof: options.roof,
          heightMetres: options.frame,
          material: options.material,
          depthMetres: options.depth,
          gradientKelvin: options.gradient,
          lengthMetres: options.member,
          warmingKelvin: options.warming,
        },
      });
      io.stdout.write(options.json ? json(answer) : aimText(answer, look(io)));
      done(0);
    });

/** What is computed of two numbers is asked for by both. */
function together({ span, depth, gradient, member, warming }: Options): void {
  if ((depth === undefined) !== (gradient === undefined) || (depth !== undefined && span === undefined))
    throw new UsageError('--depth and --gradient belong together, with --span: give all three for the thermal bow');
  if ((member === undefined) !== (warming === undefined))
    throw new UsageError('--member and --warming belong together: give both or neither');
}
