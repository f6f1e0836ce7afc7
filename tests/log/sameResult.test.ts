import { UsageError } from 'beamkeep';
import { type LogSources, logOfText, type ReadOptions } from 'beamkeep/log';
import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type LogText, logText } from './logTexts.js';
import { inChunks, rowsOf, siteOf } from './rowsOf.js';

/** What a reading gives: its rows, or the message it ends with. */
async function outcome(sources: LogSources, { site }: LogText, options: ReadOptions = {}) {
  try {
    return await rowsOf(sources, siteOf(['b1', 'b2'], site), options);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    return { refused: error.message };
  }
}

describe('one log, one result', () => {
  it('law: the plain way and the general way agree on every line', () =>
    fc.assert(
      fc.asyncProperty(logText, async (log) => {
        const plain = await outcome(logOfText(log.text), log);
        expect(plain).toEqual(await outcome(logOfText(log.text), log, { plain: false }));
      }),
      { seed: 71, numRuns: 400 },
    ));

  it('law: it does not matter how the bytes are cut', () =>
    fc.assert(
      fc.asyncProperty(
        logText,
        fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 9 }),
        async (log, sizes) => {
          const cut = { name: 'log.csv', bytes: inChunks(strToU8(log.text), sizes) };
          expect(await outcome(cut, log)).toEqual(await outcome(logOfText(log.text), log));
        },
      ),
      { seed: 72, numRuns: 200 },
    ));
});
