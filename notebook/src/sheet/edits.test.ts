import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { added, addedBefore, duplicated, folded, logAbove, moved, removed, retitled, set } from './edits.js';
import { type Cell, freshCell, freshSheet, type Sheet } from './sheet.js';

const sheet = freshSheet();
const ids = ({ cells }: Sheet): string[] => cells.map(({ id }) => id);
const at = (row: number): Cell => sheet.cells[row] as Cell;

describe('edits', () => {
  it('adds below a cell and at the top', () => {
    expect(added(sheet, 'note', at(1).id).cells[2]?.kind).toBe('note');
    expect(added(sheet, 'note', null).cells[0]?.kind).toBe('note');
  });

  it('puts cells before another', () => {
    const [aim, proof] = [freshCell('aim'), freshCell('proof')];
    expect(ids(addedBefore(sheet, [aim, proof], at(1).id)).slice(0, 4)).toEqual([at(0).id, aim.id, proof.id, at(1).id]);
    expect(ids(addedBefore(sheet, [aim], 'nowhere')).at(-1)).toBe(aim.id);
  });

  it('moves as far as there are places', () => {
    expect(ids(moved(sheet, at(1).id, -1)).slice(0, 2)).toEqual([at(1).id, at(0).id]);
    expect(moved(sheet, at(0).id, -1)).toBe(sheet);
    expect(ids(moved(sheet, at(0).id, 99)).at(-1)).toBe(at(0).id);
  });

  it('copies under an id of its own, and removes', () => {
    const copied = duplicated(sheet, at(2).id);
    expect(copied.cells[3]).toEqual({ ...at(2), id: copied.cells[3]?.id });
    expect(new Set(ids(copied)).size).toBe(copied.cells.length);
    expect(ids(removed(sheet, at(2).id))).not.toContain(at(2).id);
  });

  it('changes settings of the right cell only', () => {
    const signal = sheet.cells.find((cell) => cell.kind === 'signal') as Cell<'signal'>;
    const changed = set(sheet, signal, { scale: 'loss' });
    expect(changed.cells[1]?.settings).toMatchObject({ scale: 'loss', temperature: true });
    expect(changed.cells[0]).toBe(sheet.cells[0]);
  });

  it('an edit that changes nothing gives back the same sheet', () => {
    expect(folded(sheet, at(0).id, false)).toBe(sheet);
    expect(retitled(sheet, sheet.title)).toBe(sheet);
    expect(removed(sheet, 'nowhere')).toBe(sheet);
    expect(duplicated(sheet, 'nowhere')).toBe(sheet);
    expect(moved(sheet, 'nowhere', 1)).toBe(sheet);
  });

  it('a cell reads the nearest log above it', () => {
    const second = freshCell('log');
    const both: Sheet = { ...sheet, cells: [...sheet.cells, second, freshCell('signal')] };
    expect(logAbove(both, at(1).id)?.id).toBe(at(0).id);
    expect(logAbove(both, second.id)?.id).toBe(second.id);
    expect(logAbove(both, both.cells.at(-1)?.id ?? '')?.id).toBe(second.id);
    expect(logAbove(moved(sheet, at(1).id, -1), at(1).id)).toBeUndefined();
  });

  it('law: moving keeps every cell', () => {
    fc.assert(
      fc.property(fc.nat(6), fc.integer({ min: -9, max: 9 }), (row, places) => {
        expect(ids(moved(sheet, at(row).id, places)).sort()).toEqual(ids(sheet).sort());
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});
