import { describe, expect, it } from 'vitest';
import { smallLog, smallSite } from '../../../tests/browser/smallLog.js';
import { type DiagnoseQuestion, diagnose, diagnosisOf } from './diagnose.js';
import { logOfText, readTraces } from './log/index.js';
import { secondCause } from './secondCause.js';
import { parseSite } from './site/index.js';

const site = parseSite(smallSite());
const log = logOfText(smallLog(), 'hall.csv');
/** As a caller without types asks it. */
const asking = (explain: unknown) => ({ explain }) as DiagnoseQuestion;
const refusal = 'explain is true: give secondCause of beamkeep/moments, or nothing';

describe('what comes second', () => {
  it('is told where it is asked for, and only there', async () => {
    const second = async (question?: DiagnoseQuestion) =>
      (await diagnose(log, site, question)).diagnosis.beams[0]?.findings[0]?.runnerUp?.cause;
    expect(await second({ explain: secondCause })).toBeDefined();
    for (const nothing of [undefined, null]) expect(await second(asking(nothing))).toBeUndefined();
  });
  it('asked for as a switch is refused before the log is read, with what to give instead', async () => {
    const unread = {
      ...log,
      bytes: (async function* () {
        yield expect.unreachable() as never;
      })(),
    };
    await expect(diagnose(unread, site, asking(true))).rejects.toThrow(refusal);
    const { records, input } = await readTraces(log, site);
    expect(() => diagnosisOf(records, site, input, asking(true))).toThrow(refusal);
  });
});
