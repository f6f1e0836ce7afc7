import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escaped, html } from './markup.js';

describe('html', () => {
  it('escapes what is put in, in elements and in attributes', () =>
    expect(html`<p title="${'"><script>'}">${"<b>&'"}</p>`.markup).toBe(
      '<p title="&quot;&gt;&lt;script&gt;">&lt;b&gt;&amp;&#39;</p>',
    ));
  it('takes pieces as they are, lists in a row, and leaves out nothing', () =>
    expect(html`<ul>${[1, 'a'].map((item) => html`<li>${item}</li>`)}${undefined}${false}</ul>`.markup).toBe(
      '<ul><li>1</li><li>a</li></ul>',
    ));
  it('shows control characters and marks of direction', () =>
    expect(html`${'a\u0007b\u202ec\nd'}`.markup).toBe('a\\u{7}b\\u{202e}c d'));
  it('law: no text ever makes a sign of markup', () =>
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => !/[<>"']/.test(escaped(text))),
      { seed: 7 },
    ));
});
