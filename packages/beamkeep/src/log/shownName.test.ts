import { expect, it } from 'vitest';
import { shownName } from './shownName.js';

it('shows what could steer a terminal or turn the writing', () => {
  expect(shownName('a\u001b[2J\u202eb\u2028.csv')).toBe('a\\u{1b}[2J\\u{202e}b\\u{2028}.csv');
  expect(shownName('C:\\halls\\Lagerhalle Süd.csv')).toBe('C:\\halls\\Lagerhalle Süd.csv');
});
