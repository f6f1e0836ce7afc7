import { describe, expect, it } from 'vitest';
import { lifted } from './lifted.js';

/** What is left of a text, and what was lifted out of it. */
async function taken(text: string): Promise<{ text: string; texts: string[] }> {
  const file = new Blob([text]);
  const { text: left, stretches } = await lifted(file);
  return { text: left, texts: await Promise.all(stretches.map(({ from, to }) => file.slice(from, to).text())) };
}

describe('lifted', () => {
  it('leaves one text of base64, or a list of them, where they are', async () => {
    const text = '{"title": "x", "shelf": {"k": [{"base64": "YQ==", "name": "a"}, {"base64":["Yg==" , "Yw=="]}]}}';
    expect(await taken(text)).toEqual({
      text: '{"title": "x", "shelf": {"k": [{"base64": "0", "name": "a"}, {"base64":["1" , "2"]}]}}',
      texts: ['YQ==', 'Yg==', 'Yw=='],
    });
  });

  it('touches no other text, whatever it says', async () => {
    for (const value of [
      { text: '"base64": "YQ=="', base: 'base64', list: ['base64', ':', 'x'] },
      { 'base64 ': 'YQ==', xbase64: 'a', '\\base64': 'b', 'base64"': '\\' },
      { note: 'ends in \\', more: ['[', ']', '{', '}', ':', ','], umlaut: 'ü"base64":' },
    ]) {
      const text = JSON.stringify(value);
      expect(await taken(text)).toEqual({ text, texts: [] });
    }
  });

  it('leaves the rest of a file that is cut off as it is, so that it is no JSON', async () => {
    const { text } = await taken('{"shelf": {"k": [{"base64": "YWJ');
    expect(text).toBe('{"shelf": {"k": [{"base64": "0');
    expect((await taken('{"title": "ba')).text).toBe('{"title": "ba');
    expect((await taken('')).text).toBe('');
  });

  it('texts that are longer than what is looked at in one go', async () => {
    const long = 'YWJj'.repeat(3_000_000);
    const { text, texts } = await taken(`{"before": "${'b'.repeat(4_200_000)}", "base64": ["${long}","YQ=="], "z": 1}`);
    expect(JSON.parse(text)).toMatchObject({ base64: ['0', '1'], z: 1 });
    expect(texts[0] === long).toBe(true);
    expect(texts[1]).toBe('YQ==');
  });

  it('tells how far it has come, and is done with the whole', async () => {
    const told: number[] = [];
    await lifted(new Blob(['{"base64": "YQ=="}']), (done) => told.push(done));
    expect(told).toEqual([0, 18]);
  });
});
