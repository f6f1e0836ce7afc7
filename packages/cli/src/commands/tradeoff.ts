import { readFile } from 'node:fs/promises';
import { UsageError } from 'beamkeep';
import { logFiles } from 'beamkeep/node';
import {
  fireForms,
  fireFromWords,
  frontierPlot,
  type TradeOffOptions,
  tradeOff,
  triedSettings,
} from 'beamkeep/planning';
import { curveFire, fuelNamed, heatPoints } from 'beamkeep/smoke';
import { Argument, Command } from 'commander';
import { writeDrawings } from '../files/drawingFile.js';
import { metered, sizeOf } from '../files/progress.js';
import { readSite } from '../files/readSite.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { plain } from '../say/plain.js';
import { tradeOffText } from '../say/tradeoff.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { numberList, several } from './hallOptions.js';
import { number, whole } from './numbers.js';
import { required } from './required.js';
import { siteOption } from './shared.js';

interface Options {
  readonly site?: string;
  readonly ceiling?: number;
  readonly area?: number;
  readonly spacing: number;
  readonly fire?: readonly string[];
  readonly curve?: string;
  readonly curveFuel: string;
  readonly diameter: number;
  readonly seconds: number;
  readonly gradient: number;
  readonly roofWarmer: number;
  readonly thresholds?: readonly number[];
  readonly delays?: readonly number[];
  readonly beam?: string;
  readonly svg?: string;
  readonly force?: boolean;
  readonly json?: true;
}

const usualFires = ['medium:wood', 'fast:polyurethaneFoam'] as const;

/** A heat release curve from a file: seconds and kW. */
async function curveOf(path: string, fuel: string) {
  const text = await readFile(path, 'utf8').catch((error: unknown) => {
    throw new UsageError(`${path}: cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  });
  return curveFire(heatPoints(text, path), fuelNamed(fuel), path);
}

async function optionsOf(options: Options): Promise<TradeOffOptions> {
  const { spacing, fire, curve, curveFuel, diameter, seconds, gradient, roofWarmer, thresholds, delays, beam } =
    options;
  const named = (fire ?? (curve === undefined ? usualFires : [])).map(fireFromWords);
  const fires = curve === undefined ? named : [...named, await curveOf(curve, curveFuel)];
  return {
    hall: {
      ceiling: required(options.ceiling, '--ceiling <metres>'),
      area: required(options.area, '--area <m2>'),
      gradient,
      roofRise: roofWarmer,
    },
    places: { nearest: 0, usual: spacing / 4, farthest: spacing / 2 },
    fires: fires.map((each) => ({ fire: each, diameter, seconds: Math.min(seconds, Math.floor(each.until)) })),
    ...(thresholds !== undefined && { thresholds }),
    ...(delays !== undefined && { delays }),
    ...(beam !== undefined && { beam }),
  };
}

/** `tradeoff`: what does each threshold and each delay cost? */
export const tradeoffCommand: CommandMaker = (io, done) =>
  new Command('tradeoff')
    .summary('weigh threshold and delay: time to alarm against nuisance')
    .description(
      'Weighs threshold and delay: how late chosen fires are found and how large they are then, against the nuisance ' +
        'that the log would have given in a year.',
    )
    .addArgument(new Argument('[log...]', 'logs of the site, CSV, gzip or not; none: fires only'))
    .addOption(siteOption())
    .option('--ceiling <metres>', 'required: ceiling above the fuel, where the beams hang', number)
    .option('--area <m2>', 'required: floor area under one roof', number)
    .option('--spacing <metres>', 'distance between beams: the fire stands at most half of it aside', number, 15)
    .option('--fire <fire>', `a fire to be found, may be given again (default: ${usualFires.join(', ')})`, several)
    .option('--curve <file>', 'a heat release curve: seconds and kW, a line a point')
    .option('--curve-fuel <fuel>', 'what burns in the curve', 'wood')
    .option('--diameter <metres>', 'of the fires', number, 0.5)
    .option('--seconds <seconds>', 'how long the fires are watched', whole, 1800)
    .option('--gradient <K/m>', 'how much warmer the air grows with height', number, 0)
    .option('--roof-warmer <K>', 'how much warmer the air under the roof is than at the floor', number, 0)
    .option(
      '--thresholds <percents>',
      'thresholds to be tried, rising, with commas between; the current ones are joined',
      numberList,
    )
    .option(
      '--delays <seconds>',
      'delays to be tried, rising, with commas between; the current ones are joined',
      numberList,
    )
    .option('--beam <id>', 'only this beam')
    .option('--svg <file>', 'write the plot of both costs as SVG, of the first beam')
    .option('--force', 'write over a file that is there')
    .option('--json', 'print the grid as JSON instead of text')
    .addHelpText(
      'after',
      `
${wrap(`Fires: ${fireForms}`, 80, '', '  ')}

Examples:
  beamkeep tradeoff log.csv --site site.json --ceiling 12 --area 1860
  beamkeep tradeoff --site site.json --ceiling 20 --area 3000 --gradient 0.8 --fire fast:wood --fire smouldering
  beamkeep tradeoff log.csv --site site.json --ceiling 12 --area 1860 --curve burn.csv --svg tradeoff.svg --json`,
    )
    .action(async (paths: string[], options: Options) => {
      const given = await optionsOf(options);
      const site = await readSite(required(options.site, '--site <file>'), io, paths);
      const beams = site.beams.filter(({ id }) => given.beam === undefined || id === given.beam);
      const weighed = { ...given, ...triedSettings({ ...site, beams }, given) };
      const files = await logFiles(paths, io.stdin);
      const answer =
        paths.length === 0
          ? await tradeOff(null, site, weighed)
          : await metered(sizeOf(files), io.stderr, (onProgress) => tradeOff(files, site, { ...weighed, onProgress }));
      const [first] = answer.beams;
      const written =
        first === undefined ? [] : await writeDrawings([[options.svg, frontierPlot(first)]], options.force ?? false);
      const told = written.length === 0 ? '' : `\nWritten: ${plain(written.join(', '))}\n`;
      io.stdout.write(options.json ? json(answer) : `${tradeOffText(answer, look(io))}${told}`);
      done(0);
    });
