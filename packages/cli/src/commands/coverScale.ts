import { UsageError } from 'beamkeep';
import { type CoverWay, coverScale, lightingOf, widestPrint } from 'beamkeep/commissioning';
import { Command, Option } from 'commander';
import { exists, writeWhole } from '../files/writeWhole.js';
import { coverScaleText } from '../say/commissioning/coverScale.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { number } from './numbers.js';

interface Options {
  readonly width?: number;
  readonly diameter?: number;
  readonly separation?: number;
  readonly halfAngle?: number;
  readonly way: CoverWay;
  readonly out?: string;
  readonly force?: boolean;
  readonly json?: true;
}

const notes = wrap(
  'A cover on the reflector is met once, a filter before a reflective head twice. Without --half-angle the reflector is ' +
    'taken to be lit evenly, which holds where the spot is much larger than the reflector.',
  80,
);

/** `cover-scale`: how far must a cover be pushed to hide so much? */
export const coverScaleCommand: CommandMaker = (io, done) =>
  new Command('cover-scale')
    .summary('how far to push a cover over a reflector for each obscuration; a scale to print')
    .description('Tells how far to push a cover over a reflector for each obscuration, and draws it true to size.')
    .option('--width <mm>', 'width of a rectangular reflector, across the edge of the cover', number)
    .option('--diameter <mm>', 'diameter of a round reflector', number)
    .option('--separation <metres>', 'with --half-angle: distance between head and reflector', number)
    .option('--half-angle <degrees>', 'turn of the head at which the received level halves: lit by the lobe', number)
    .addOption(new Option('--way <word>', 'from where the cover comes').choices(['edge', 'middle']).default('edge'))
    .option('--out <file>', 'write the scale as SVG in millimetres, to be printed at 100 %')
    .option('--force', 'write over a file that is there')
    .option('--json', 'print the answer as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep cover-scale --width 100 --out scale.svg
  beamkeep cover-scale --diameter 80 --way middle --half-angle 0.7 --separation 62

${notes}`,
    )
    .action(async ({ width, diameter, separation, halfAngle, way, out, force = false, json: asJson }: Options) => {
      if ((width === undefined) === (diameter === undefined))
        throw new UsageError('give --width of a rectangular reflector, or --diameter of a round one');
      if ((separation === undefined) !== (halfAngle === undefined))
        throw new UsageError('--half-angle and --separation belong together: give both or neither');
      const reflector = width !== undefined ? ({ shape: 'rectangle', width } as const) : roundOf(diameter);
      const lighting =
        separation === undefined
          ? undefined
          : lightingOf(
              { lit: 'by-the-lobe' },
              { id: 'of the scale', separation, ...(halfAngle !== undefined && { halfAngle }) },
            );
      const scale = coverScale(reflector, lighting, way);
      if (out !== undefined) {
        if (!force && (await exists(out)))
          throw new UsageError(`${out} is there already; name another, or add --force`);
        await writeWhole(out, scale.drawing);
      }
      const answer = {
        format: 'beamkeep-cover-scale/1',
        reflector,
        way,
        lit: lighting === undefined ? 'evenly' : 'by-the-lobe',
        halfPowerRadius: lighting?.halfPowerRadius ?? null,
        marks: scale.marks,
        fitsOnPaper: (width ?? diameter ?? 0) <= widestPrint,
        file: out ?? null,
      };
      io.stdout.write(asJson ? json(answer) : coverScaleText(answer, look(io)));
      done(0);
    });

const roundOf = (diameter = 0) => ({ shape: 'round', diameter }) as const;
