import fc from 'fast-check';

/** Pieces of text that have broken programs before, and any other text now and then. */
export const awkward: fc.Arbitrary<string> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      '',
      '\0',
      '\ufeff',
      '\u001b[2J\u001b]0;x\u0007',
      '\u009b31m',
      '\u202eabc',
      '\u2028',
      '\ud800',
      '__proto__',
      'constructor',
      'toString',
      'hasOwnProperty',
      '1e309',
      '-1e309',
      '1e-400',
      'NaN',
      '-0',
      '0x1F',
      '9'.repeat(400),
      '"',
      '"""',
      "'",
      '\\',
      ',',
      ';'.repeat(500),
      '\t',
      '\r',
      '\n',
      '\n\n\n',
      '275760-09-13T00:00:00Z',
      '-271821-04-20T00:00:00Z',
      '0000-01-01T00:00:00Z',
      '2027-02-30T25:61:61Z',
      '=HYPERLINK("x")',
      '('.repeat(300),
      '[['.repeat(2000),
      'a'.repeat(20_000),
    ),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 40 }) },
);

/** Any JSON, now and then with numbers and names that are hard to bear. */
export const nestedJson: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue({ maxDepth: 4 }),
  awkward,
  fc.constantFrom(1e308, -1e308, 5e-324, -0, 2 ** 53, null, true, [], {}),
  fc.dictionary(awkward, fc.jsonValue({ maxDepth: 2 }), { maxKeys: 3 }),
);

/** A text with a piece put in somewhere. */
export const bent = (text: string, at: number, piece: string): string => {
  const place = at % (text.length + 1);
  return text.slice(0, place) + piece + text.slice(place);
};
