import { figureMeanings, figureNamed, type OwnFigures, type PlanRequest, plan, ruleSets } from 'beamkeep/planning';
import { Command, Option } from 'commander';
import { writeDrawings } from '../files/drawingFile.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { plain } from '../say/plain.js';
import { planText } from '../say/plan.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { numberList, pairs, together } from './hallOptions.js';
import { number } from './numbers.js';
import { required } from './required.js';

interface Options {
  readonly length?: number;
  readonly width?: number;
  readonly height?: number;
  readonly apex?: number;
  readonly rules: string;
  readonly set?: Readonly<Record<string, number>>;
  readonly below?: number;
  readonly lower?: readonly number[];
  readonly gradient?: number;
  readonly roofWarmer?: number;
  readonly fireKw?: number;
  readonly planSvg?: string;
  readonly sectionSvg?: string;
  readonly force?: boolean;
  readonly json?: true;
}

function ownFigures(given: Readonly<Record<string, number>>): OwnFigures {
  return Object.fromEntries(Object.entries(given).map(([name, value]) => [figureNamed(name), value]));
}

function requestOf(options: Options): PlanRequest {
  const { apex, rules, set = {}, below, lower, gradient, roofWarmer, fireKw } = options;
  together(
    gradient !== undefined || roofWarmer !== undefined,
    fireKw !== undefined,
    '--gradient and --roof-warmer need --fire-kw: convective heat of the fire that shall be seen',
  );
  return {
    length: required(options.length, '--length <metres>'),
    width: required(options.width, '--width <metres>'),
    height: required(options.height, '--height <metres>'),
    ...(apex !== undefined && { roof: { shape: 'pitched', apex } }),
    ruleSet: rules,
    overrides: ownFigures(set),
    ...(below !== undefined && { belowCeiling: below }),
    ...(lower !== undefined && { lowerRows: lower }),
    ...(fireKw !== undefined && {
      air: {
        convectiveHeat: fireKw,
        ...(gradient !== undefined && { gradient }),
        ...(roofWarmer !== undefined && { roofRise: roofWarmer }),
      },
    }),
  };
}

/** `plan`: how many beams, where, how high? */
export const planCommand: CommandMaker = (io, done) =>
  new Command('plan')
    .summary('lay out beams in a hall by a rule set: how many, where, how high')
    .description('Lays out beams in a hall by a rule set, with warnings by clause, a plan and a section to scale.')
    .option('--length <metres>', 'required: length of the hall; beams run along it', number)
    .option('--width <metres>', 'required: width of the hall', number)
    .option('--height <metres>', 'required: height of a flat ceiling, or of the eaves', number)
    .option('--apex <metres>', 'height of the ridge of a pitched roof, along the length in the middle', number)
    .addOption(new Option('--rules <word>', 'rule set').choices(ruleSets.map(({ id }) => id)).default('bs5839-1'))
    .option('--set <figure=value>', 'own figure in place of the rule set’s; may be given again', pairs)
    .option('--below <metres>', 'how far below the ceiling the beams hang', number)
    .option('--lower <metres>', 'heights of lower rows above the floor, with commas between', numberList)
    .option('--gradient <K/m>', 'how much warmer the air grows with height', number)
    .option('--roof-warmer <K>', 'how much warmer the air under the roof is than at the floor', number)
    .option('--fire-kw <kW>', 'convective heat of the fire that shall be seen all the same', number)
    .option('--plan-svg <file>', 'write the plan as SVG')
    .option('--section-svg <file>', 'write the section as SVG')
    .option('--force', 'write over files that are there')
    .option('--json', 'print the plan as JSON instead of text')
    .addHelpText(
      'after',
      `
Figures for --set, in metres where not said:
${Object.entries(figureMeanings)
  .map(([name, meaning]) => wrap(`${name}: ${meaning}`, 80, '  ', '    '))
  .join('\n')}

Examples:
  beamkeep plan --length 62 --width 40 --height 12 --rules bs5839-1
  beamkeep plan --length 62 --width 40 --height 9 --apex 14 --set toSide=6 --section-svg section.svg
  beamkeep plan --length 80 --width 30 --height 20 --gradient 0.8 --fire-kw 100 --json`,
    )
    .action(async (options: Options) => {
      const answer = plan(requestOf(options));
      const written = await writeDrawings(
        [
          [options.planSvg, answer.drawings.plan],
          [options.sectionSvg, answer.drawings.section],
        ],
        options.force ?? false,
      );
      const files = written.length === 0 ? '' : `\nWritten: ${plain(written.join(', '))}\n`;
      io.stdout.write(options.json ? json(answer.plan) : `${planText(answer.plan, look(io))}${files}`);
      done(0);
    });
