import { describe, expect, it } from 'vitest';
import { footnotes } from './footnotes.js';

describe('footnotes', () => {
  it('numbers notes as they are met, one note for one basis', () => {
    const notes = footnotes();
    const first = notes.number('1.53 dB', 'aimLoss').markup;
    const second = notes.number('<b>', 'ratio').markup;
    expect(notes.number('2 dB', 'aimLoss').markup).toContain('#note-1');
    expect(first).toContain('title="loss by the aim: 3.0103 r^power dB');
    expect(second).toContain('&lt;b&gt;</span>');
    expect(second).toContain('#note-2');
    // "124 m" with a bare 2 above it would be an area.
    expect(first).toMatch(/>\[1\]<\/a><\/sup>/);
    expect(notes.list().markup.match(/<li /g)).toHaveLength(2);
  });
  it('leads from a heading to several', () =>
    expect(
      footnotes()
        .references('lobe', 'offset')
        .markup.match(/#note-/g),
    ).toHaveLength(2));
});
