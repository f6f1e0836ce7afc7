import { type BudgetQuestion, budgetBar, lossBudget } from 'beamkeep/planning';
import { Command } from 'commander';
import { writeDrawings } from '../files/drawingFile.js';
import { budgetText } from '../say/budget.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { plain } from '../say/plain.js';
import type { CommandMaker } from './command.js';
import { together } from './hallOptions.js';
import { number } from './numbers.js';
import { required } from './required.js';

interface Options {
  readonly separation?: number;
  readonly nearest?: number;
  readonly farthest?: number;
  readonly divergence?: number;
  readonly receiver?: number;
  readonly reflector?: number;
  readonly spread?: number;
  readonly halfAngle?: number;
  readonly offset: number;
  readonly movement: number;
  readonly dirt: number;
  readonly threshold: number;
  readonly svg?: string;
  readonly force?: boolean;
  readonly json?: true;
}

function questionOf(options: Options): BudgetQuestion {
  const { reflector, spread, offset, movement, dirt, threshold } = options;
  together(
    reflector !== undefined,
    spread !== undefined,
    '--reflector needs --spread: the angle by which it spreads light',
  );
  together(spread !== undefined, reflector !== undefined, '--spread needs --reflector: its diameter');
  return {
    optics: {
      divergenceDegrees: required(options.divergence, '--divergence <degrees>'),
      receiverMetres: required(options.receiver, '--receiver <metres>'),
      ...(reflector !== undefined &&
        spread !== undefined && { reflector: { diameterMetres: reflector, spreadDegrees: spread } }),
    },
    separation: required(options.separation, '--separation <metres>'),
    nearest: required(options.nearest, '--nearest <metres>'),
    farthest: required(options.farthest, '--farthest <metres>'),
    halfAngle: required(options.halfAngle, '--half-angle <degrees>'),
    aimOffset: offset,
    movement,
    dirtPercent: dirt,
    alarmThreshold: threshold,
  };
}

/** `budget`: what do range, aim, dirt and structure take? */
export const budgetCommand: CommandMaker = (io, done) =>
  new Command('budget')
    .summary('tell what range, aim, dirt and structure take from a beam, in dB')
    .description("Tells what range, aim, dirt and structure take from a beam's light and from its margin to the alarm.")
    .option('--separation <metres>', 'required: distance between the two ends', number)
    .option('--nearest <metres>', 'required: shortest distance that the maker allows', number)
    .option('--farthest <metres>', 'required: longest distance that the maker allows', number)
    .option('--divergence <degrees>', 'required: full angle of the emitted beam', number)
    .option('--receiver <metres>', 'required: diameter of the receiving lens', number)
    .option('--half-angle <degrees>', 'required: turn at which the received level halves', number)
    .option('--reflector <metres>', 'diameter of the reflector; left out: an end-to-end beam', number)
    .option('--spread <degrees>', 'full angle by which the reflector spreads light', number)
    .option('--offset <degrees>', 'how far the aim stands off the peak', number, 0)
    .option('--movement <degrees>', 'how far the structure may move the aim beyond that', number, 0)
    .option('--dirt <percent>', 'light that dirt takes until the next cleaning', number, 0)
    .option('--threshold <percent>', 'alarm threshold', number, 35)
    .option('--svg <file>', 'write both bars as SVG')
    .option('--force', 'write over a file that is there')
    .option('--json', 'print the budget as JSON instead of text')
    .addHelpText(
      'after',
      `
Optical figures are the maker's: none is assumed.

Examples:
  beamkeep budget --separation 62 --nearest 8 --farthest 100 --divergence 1.2 --receiver 0.03 \\
    --reflector 0.2 --spread 0.4 --half-angle 0.5 --offset 0.2 --movement 0.15 --dirt 8
  beamkeep budget --separation 80 --nearest 10 --farthest 100 --divergence 1 --receiver 0.04 --half-angle 0.5 --json`,
    )
    .action(async (options: Options) => {
      const budget = lossBudget(questionOf(options));
      const written = await writeDrawings([[options.svg, budgetBar(budget)]], options.force ?? false);
      const files = written.length === 0 ? '' : `\nWritten: ${plain(written.join(', '))}\n`;
      io.stdout.write(options.json ? json(budget) : `${budgetText(budget, look(io))}${files}`);
      done(0);
    });
