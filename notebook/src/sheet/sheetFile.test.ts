import { describe, expect, it } from 'vitest';
import { freshSheet } from './sheet.js';
import { openedSheet, sheetText } from './sheetFile.js';

const sheet = freshSheet({ from: 'demo' });
const text = sheetText(sheet);

/** The saved sheet with something changed. */
function spoilt(change: (json: { format: unknown; cells: { id?: unknown }[] }) => void): string {
  const json = JSON.parse(text);
  change(json);
  return JSON.stringify(json);
}

describe('sheetFile', () => {
  it('there and back', () => {
    expect(openedSheet(text)).toEqual({ sheet, shelf: {} });
  });

  it('brings the log files along', () => {
    const whole = JSON.stringify({ ...JSON.parse(text), shelf: { k1: [{ name: 'a.csv', base64: 'YQ==' }] } });
    expect(openedSheet(whole).shelf).toEqual({ k1: [{ name: 'a.csv', base64: 'YQ==' }] });
  });

  it.each([
    ['cut off', () => text.slice(0, 100), /not complete JSON/],
    [
      'another version',
      () => spoilt((json) => (json.format = 'beamkeep-sheet/9')),
      /of version "9", .* newer notebook/,
    ],
    ['something else', () => '{"beams":[]}', /does not begin as a worksheet/],
    ['no object', () => 'null', /does not begin as a worksheet/],
    ['no cells', () => spoilt((json) => (json.cells = JSON.parse('"x"'))), /cells: /],
    [
      'a strange kind',
      () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { kind: 'toString' })),
      /cells\[1\] is of a kind .* "toString"/,
    ],
    [
      'wrong settings',
      () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { settings: { scale: 'red' } })),
      /cells\[1\]\.settings\.scale/,
    ],
    [
      'an id twice',
      () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { id: json.cells[0]?.id })),
      /two of its cells have one id/,
    ],
  ])('refuses %s in words', (_what, file, message) => {
    expect(() => openedSheet(file())).toThrow(message);
  });

  const long = 'x'.repeat(100_000);
  it.each([
    ['version', () => spoilt((json) => (json.format = `beamkeep-sheet/${long}`)), /newer notebook/],
    ['form', () => spoilt((json) => (json.format = long)), /expected "beamkeep-sheet\/1"/],
    ['kind', () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { kind: long })), /cells\[1\] is of a kind/],
    ['value', () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { folded: long })), /cells\[1\]\.folded/],
    ['key', () => spoilt((json) => Object.assign(json.cells[1] ?? {}, { [`${long}\n\u202e`]: 1 })), /cells\[1\]/],
  ])('a %s of 100,000 characters makes one short line', (_what, file, message) => {
    let said = '';
    try {
      openedSheet(file());
    } catch (error) {
      said = String((error as Error).message);
    }
    expect(said).toMatch(message);
    expect(said.length).toBeLessThanOrEqual(300);
    expect(said).not.toMatch(/[\n\u202e]/);
  });

  it('what could steer a terminal, or turn the writing round, is not repeated', () => {
    const file = spoilt((json) => Object.assign(json.cells[1] ?? {}, { folded: '\u001b[2J\n\u202eabc' }));
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
    expect(() => openedSheet(file)).toThrow(/^[^\u0000-\u001f\u202e]+$/);
  });
});
