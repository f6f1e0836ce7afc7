import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begun, canRedo, canUndo, edited, present, redone, stepsKept, undone } from './history.js';

describe('history', () => {
  it('goes back and forth', () => {
    const two = edited(edited(begun(0), 1), 2);
    expect(present(undone(two))).toBe(1);
    expect(present(redone(undone(two)))).toBe(2);
    expect(canUndo(begun(0))).toBe(false);
    expect(canRedo(two)).toBe(false);
  });

  it('an edit cuts off what was undone', () => {
    const history = edited(undone(edited(edited(begun(0), 1), 2)), 3);
    expect(history.states).toEqual([0, 1, 3]);
  });

  it('typing into one field is one step', () => {
    const typed = edited(edited(edited(begun(''), 'a', 'note'), 'ab', 'note'), 'abc', 'note');
    expect(present(undone(typed))).toBe('');
    expect(edited(typed, 'x', 'other').states).toEqual(['', 'abc', 'x']);
  });

  it('the mark ends with an undo', () => {
    const again = edited(undone(edited(edited(begun(''), 'a', 'note'), 'b')), 'c', 'note');
    expect(again.states).toEqual(['', 'a', 'c']);
  });

  it('the same state again is no step', () => {
    const state = {};
    expect(edited(begun(state), state).states.length).toBe(1);
  });

  it('law: never longer than it may be, and always somewhere', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('edit', 'undo', 'redo'), { maxLength: 600 }), (moves) => {
        let history = begun(0);
        moves.forEach((move, i) => {
          history = move === 'edit' ? edited(history, i + 1) : move === 'undo' ? undone(history) : redone(history);
        });
        expect(history.states.length).toBeLessThanOrEqual(stepsKept);
        expect(present(history)).toBeTypeOf('number');
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});
