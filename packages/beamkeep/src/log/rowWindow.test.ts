import { expect, it } from 'vitest';
import { grow, rowWindow, shift } from './rowWindow.js';

it('keeps its rows when it grows, and those behind the first when they leave', () => {
  const window = rowWindow(2, 3);
  for (let row = 0; row < 3; row++) {
    window.time[row] = row * 10;
    window.line[row] = row + 2;
    window.values[row] = row;
    window.values[3 + row] = -row;
  }
  window.count = 3;
  grow(window, 6);
  expect([window.capacity, window.count, window.values[2], window.values[6 + 2]]).toEqual([6, 3, 2, -2]);
  shift(window, 2);
  expect([window.count, window.time[0], window.line[0], window.values[0], window.values[6]]).toEqual([1, 20, 4, 2, -2]);
  expect(window.lastLeft).toBe(10);
});
