import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logPlan } from './columnPlan.js';
import { logHead } from './head.js';
import { noteBook } from './inputNotes.js';
import { clockCell, nameCell, skipped, timeCell, valueCell } from './linePlan.js';

const head = (text: string, file = 'a.csv') => logHead(file, strToU8(text), true, 50);
const siteOf = (beams: readonly object[], more: object = {}) =>
  parseSite({
    format: 'beamkeep-site/1',
    beams: beams.map((beam, at) => ({ id: `B${at}`, layout: 'reflective', separation: 50, ...beam })),
    ...more,
  });
const t = '2027-01-04T00:00:00Z';

describe('logPlan', () => {
  it('signals first, each column once', () => {
    const site = siteOf([
      { signalColumn: 'x', temperatureColumn: 't' },
      { signalColumn: 'y', temperatureColumn: 't' },
    ]);
    const plan = logPlan([head(`time,t,y,remark,x\n${t},8,2,ok,1\n`)], site, noteBook());
    expect(plan.columns.names).toEqual(['x', 'y', 't']);
    expect([...(plan.files[0]?.actions ?? [])]).toEqual([timeCell, 2, 1, skipped, 0]);
    expect([plan.columns.signal, plan.columns.of('t'), plan.columns.of(undefined)]).toEqual([[0, 1], 2, undefined]);
  });
  it('time in two columns, one reading a line', () => {
    const site = siteOf([{ signalColumn: 'x' }], { timeColumn: ['day', 'hour'] });
    const plan = logPlan([head('day,hour,what,value\n2027-01-04,00:00,x,1\n')], site, noteBook());
    expect([...(plan.files[0]?.actions ?? [])]).toEqual([timeCell, clockCell, nameCell, valueCell]);
    expect(plan.files[0]?.columnOf?.('x', 2)).toBe(0);
    expect(plan.files[0]?.columnOf?.('z', 2)).toBeUndefined();
    expect([...plan.unwanted]).toEqual(['z']);
  });
  it('a file tells which columns it lacks', () => {
    const site = siteOf([{ signalColumn: 'x' }, { signalColumn: 'y' }]);
    const plan = logPlan([head(`time,x\n${t},1\n`), head(`time,y\n${t},1\n`, 'b.csv')], site, noteBook());
    expect(plan.files.map(({ absent }) => absent)).toEqual([[1], [0]]);
  });
});
