import { describe, expect, it } from 'vitest';
import { freshCell, freshSettings, freshSheet } from './sheet.js';
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

  it('opens a file that was written before some settings and kinds of cells were known', () => {
    const older = JSON.stringify({
      format: 'beamkeep-sheet/1',
      title: 'June',
      cells: [
        { id: 'a', kind: 'log', folded: false, settings: { log: { from: 'demo' }, site: null } },
        {
          id: 'b',
          kind: 'signal',
          folded: true,
          settings: { scale: 'loss', reach: 'data', temperature: true, without: null },
        },
        { id: 'c', kind: 'covered', folded: false, settings: { beam: 'B1', test: { name: 'a.csv', text: 'time,b1' } } },
      ],
    });
    const [log, signal, test] = openedSheet(older).sheet.cells;
    expect(log?.settings).toMatchObject({ log: { from: 'demo' }, events: null });
    expect(signal).toMatchObject({ folded: true, settings: { scale: 'loss', states: true } });
    expect(test?.settings).toEqual({ beam: 'B1', test: { name: 'a.csv', text: 'time,b1' } });
  });

  it('a proof and a record go there and back with what was written in them', () => {
    const proof = freshCell('proof', {
      ...freshSettings.proof,
      beam: 'B2',
      test: { name: 'proof.csv', text: 'time,b2\n' },
      clockOffset: '140',
      times: ['', '2027-01-20T11:53:20'],
    });
    const record = freshCell('record', {
      ...freshSettings.record,
      date: '2027-01-20',
      told: [{ who: '<b>monitoring</b>', time: '2027-01-20T09:20' }],
    });
    const day = { title: 'The day', cells: [freshCell('log'), proof, record] };
    expect(openedSheet(sheetText(day)).sheet).toEqual(day);
  });

  it.each([
    ['in pieces', ['YQ==']],
    ['as one text, as older files hold them', 'YQ=='],
  ])('brings the log files along, %s', (_how, base64) => {
    const whole = JSON.stringify({ ...JSON.parse(text), shelf: { k1: [{ name: 'a.csv', base64 }] } });
    expect(openedSheet(whole).shelf).toEqual({ k1: [{ name: 'a.csv', base64: ['YQ=='], zipped: false }] });
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
