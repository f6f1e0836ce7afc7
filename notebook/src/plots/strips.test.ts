import { describe, expect, it } from 'vitest';
import type { NumberedFinding } from '../bench/reading.js';
import { rowsOf, strips } from './strips.js';

const finding = (number: number, start: number, end: number): NumberedFinding => ({
  number,
  beam: 'a',
  cause: 'obstruction',
  start,
  end,
  ongoing: false,
  confidence: 1,
  severity: 'note',
  summary: '',
  evidence: [],
  action: '',
  settles: '',
});
const whole = { from: 0, to: 100 };

describe('strips', () => {
  it('uses a new row only where bars would cover each other', () => {
    const placed = strips([finding(1, 0, 10), finding(2, 5, 20), finding(3, 12, 30)], whole, () => 1, 9);
    expect(placed.map(({ row }) => row)).toEqual([0, 1, 0]);
    expect(rowsOf(placed)).toBe(2);
  });

  it('leaves room for the name of a short one', () => {
    expect(strips([finding(1, 0, 0), finding(2, 3, 3)], whole, () => 5, 9).map(({ row }) => row)).toEqual([0, 1]);
  });

  it('leaves room beside a bar that is too short for its name', () => {
    const place = (end: number): number[] =>
      strips([finding(1, 0, end), finding(2, end + 3, 60)], whole, () => 5, 9).map(({ row }) => row);
    expect(place(4)).toEqual([0, 1]);
    expect(place(6)).toEqual([0, 0]);
  });

  it('has no more rows than it may: the rest go without a name', () => {
    const many = Array.from({ length: 10 }, (_, i) => finding(i, i, i));
    const placed = strips(many, whole, () => 50, 3);
    expect(rowsOf(placed)).toBe(3);
    expect(placed.map(({ named }) => named)).toEqual([true, true, ...new Array<boolean>(8).fill(false)]);
    expect(placed.length).toBe(10);
  });

  it('a name that the edge would cut stands before its bar, where there is room', () => {
    const place = (start: number): unknown[] =>
      strips([finding(1, 0, start), finding(2, 97, 98)], whole, () => 20, 9).map(({ row, before }) => [row, before]);
    expect(place(70)).toEqual([
      [0, false],
      [0, true],
    ]);
    expect(place(80)[1]).toEqual([1, true]);
    expect(strips([finding(1, 10, 11)], { from: 0, to: 25 }, () => 20, 9)[0]?.before).toBe(false);
  });

  it('leaves out what is not in sight', () => {
    expect(strips([finding(1, 0, 10), finding(2, 50, 60)], { from: 20, to: 100 }, () => 1, 3).length).toBe(1);
  });
});
