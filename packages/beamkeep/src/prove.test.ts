import { describe, expect, it } from 'vitest';
import { depot, log, tableOf, text } from '../../../tests/commissioning/demo.js';
import { parseProofSheet, usualSteps } from './commissioning/index.js';
import { logOfText } from './log/index.js';
import { proofPlan, prove } from './prove.js';
import { parseSite } from './site/index.js';

/* Asked of the demonstration files of the commissioning day, whose truth is known: see their README. */

const sheetOf = async (id: string) => parseProofSheet(await text(`proof-${id}.sheet.json`), `proof-${id}.sheet.json`);

describe('prove', () => {
  const events = async () => ({ events: await tableOf('events.csv'), clockOffsetSeconds: 140 });
  it.each(['b1', 'b3'])('%s passes, by signal and by the panel’s list', async (id) => {
    const answer = await prove(await log(`proof-${id}.csv`), await depot(), await sheetOf(id), await events());
    expect(answer).toMatchObject({ format: 'beamkeep-proof/1', verdict: 'pass', unexplained: [], panelList: true });
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  it('B2 fails one step: the cover was drawn on too slowly for a blocked beam', async () => {
    const answer = await prove(await log('proof-b2.csv'), await depot(), await sheetOf('b2'), await events());
    expect(answer.verdict).toBe('fail');
    expect(answer.steps.filter(({ verdict }) => verdict === 'fail').map(({ expected }) => expected.do)).toEqual([
      'cover-at-once',
    ]);
    expect(answer.steps[5]?.riseSeconds).toBeCloseTo(3.5, 5);
  });
  it('a clock that is not put right makes the list a wrong witness', async () => {
    const wrong = { ...(await events()), clockOffsetSeconds: 120 };
    const answer = await prove(await log('proof-b1.csv'), await depot(), await sheetOf('b1'), wrong);
    expect(answer.verdict).toBe('fail');
    expect(answer.steps[2]?.reasons.join(' ')).toContain("panel's list");
  });
  it('without the list the steps that only the panel shows stay open', async () => {
    const answer = await prove(await log('proof-b1.csv'), await depot(), await sheetOf('b1'));
    expect(answer.verdict).toBe('open');
    expect(answer.steps.at(-1)).toMatchObject({ verdict: 'not shown', shownBy: 'nobody' });
  });
  it('prints a sheet before the test, and takes it back', async () => {
    const site = await depot();
    const [beam] = site.beams;
    if (!beam) throw new Error('no beam');
    const plan = proofPlan(usualSteps(beam), site);
    expect(plan.steps.map((step) => step.do)).toContain('cover-slowly');
    expect(parseProofSheet(JSON.stringify(plan.sheet))).toEqual(plan.sheet);
  });
  it('refuses a time that is none', async () => {
    const sheet = await sheetOf('b1');
    const steps = sheet.steps.map((step) => ({ ...step, time: 'at noon' }));
    await expect(prove(await log('proof-b1.csv'), await depot(), { ...sheet, steps })).rejects.toThrow(
      'steps[0].time is "at noon"',
    );
  });
  it('reads a log on change as what held between its lines', async () => {
    const lines = [
      '10:00:00,100',
      '10:00:40,80',
      '10:01:20,100',
      '10:02:00,60',
      '10:02:03,20',
      '10:02:06,0',
      '10:02:30,100',
      '10:03:20,100.1',
    ];
    const csv = `time,b1\n${lines.map((line) => `2027-01-20T${line.replace(',', 'Z,')}`).join('\n')}\n`;
    const site = parseSite({
      sampling: 'on-change',
      beams: [{ id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1' }],
    });
    const steps = [{ do: 'part-cover', obscuration: 20 }, { do: 'uncover' }, { do: 'cover-slowly' }, { do: 'uncover' }];
    const sheet = parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps });
    const answer = await prove(logOfText(csv), site, sheet);
    expect(answer.steps.map(({ verdict, reasons }) => [verdict, reasons[0]])).toEqual([
      ['pass', 'No signal came, as it must not.'],
      ['pass', expect.stringContaining('came back')],
      ['pass', expect.stringContaining('Fire due 10 s after')],
      ['pass', expect.stringContaining('came back')],
    ]);
    expect(answer.steps[2]?.signalAt).toBe('2027-01-20T10:02:10.000Z');
  });
});
