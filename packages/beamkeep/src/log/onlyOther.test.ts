import { strToU8 } from 'fflate';
import { expect, it } from 'vitest';
import { logHead } from './head.js';
import { noteBook } from './inputNotes.js';
import { onlyOther } from './onlyOther.js';

const only = (text: string, claimed: readonly string[] = []) => {
  const head = logHead('a.csv', strToU8(text), true, 50);
  return onlyOther([{ head, time: 0, clock: -1 }], new Set(claimed), 'beams[0] signalColumn', noteBook());
};

it('the column that has no other use', () => {
  expect(only('time,x\n1,2\n')).toBe('x');
  expect(only('time,t,x\n1,8,2\n', ['t'])).toBe('x');
  expect(only('time,x,state\n1,2,ok\n1,3,\n')).toBe('x');
});
it('a column that is empty so far may be a beam: nothing is guessed', () =>
  expect(() => only('time,x,y\n1,2,\n')).toThrow('several columns beside time ("x", "y")'));
it('where every column has another use, that is told', () =>
  expect(() => only('time,t\n1,8\n', ['t'])).toThrow(
    'a.csv:1: beams[0] signalColumn is left out, and the log has no column for it',
  ));
