import { describe, expect, it } from 'vitest';
import { html } from './markup.js';
import { amount, amountBetween, type facts, list, table } from './parts.js';

const shown = (content: Parameters<typeof facts>[0][number][1]) => html`${content}`.markup;
const gap = (words: string) => `<span class="missing">${words}</span>`;

describe('parts of the record', () => {
  it('an amount keeps its unit beside it; unknown and endless ones say so', () => {
    expect(shown(amount(1.2345, 'dB'))).toBe('1.23\u00a0dB');
    expect(shown(amount(0))).toBe('0');
    expect(shown(amount(null, 'dB'))).toBe(gap('not known'));
    expect(shown(amount('infinite', 'dB'))).toBe('never');
    expect(shown(amountBetween({ value: 1, low: 0.5, high: null }, 'm'))).toBe(`1\u00a0m (0.5 to ${gap('not known')})`);
  });
  it('a list without items is nothing, or a gap where something had to be', () => {
    expect(shown(list([]))).toBe('');
    expect(shown(list([], 'nobody'))).toBe(`<p>${gap('nobody')}</p>`);
    expect(shown(list(['a', 'b']))).toBe('<ul><li>a</li>\n<li>b</li>\n</ul>');
  });
  it('a table has a head for every column, and a row a line', () =>
    expect(table(['a', 'b'], [['1', '<']]).markup).toBe(
      '<table>\n<thead><tr><th scope="col">a</th><th scope="col">b</th></tr></thead>\n<tbody><tr><td>1</td><td>&lt;</td></tr>\n</tbody></table>',
    ));
});
