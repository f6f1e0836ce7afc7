import { type CoveredJson, coveredAnswer, coveredTest, evenRows, thinned } from './commissioning/index.js';
import { type LogSources, type ReadingsQuestion, type ReadOptions, readReadings } from './log/index.js';
import { bearsOnResponse, type Site } from './site/index.js';

/**
 * Reads a logged covered test and tells what still comes back without the beam, and what that does to the thresholds.
 *
 * @param sources the log of the test
 * @param site the site
 * @param question which beam; from when to when, where the log is longer than the test
 * @returns stretches, ratio, largest obscuration, thresholds and what to do
 * @throws UsageError where the log cannot be used, or shows no covered stretch beside clean air
 * @example (await covered(logOfText(csv), site, { beam: 'B1' })).verdict // fit
 */
export async function covered(
  sources: LogSources,
  site: Site,
  question: ReadingsQuestion = {},
  options: ReadOptions = {},
): Promise<CoveredJson> {
  const { beam, time, power, powerStep, end, assumed, input } = await readReadings(sources, site, question, options);
  const even = site.sampling === 'on-change' ? evenRows(time, power, end) : { time, values: power };
  const test = coveredTest({ time: even.time, power: even.values, step: powerStep }, beam);
  return coveredAnswer(test, beam, {
    trace: thinned(even.time, even.values, 4, test.clean),
    assumed: [...beam.assumed.filter(bearsOnResponse), ...assumed],
    input,
  });
}
