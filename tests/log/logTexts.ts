import fc from 'fast-check';

/** A log as text, and what a site must say of it. */
export interface LogText {
  readonly text: string;
  readonly site: {
    readonly timeFormat?: string;
    readonly timeZone: string;
    readonly timeColumn?: readonly [string, string];
  };
}

const two = (n: number): string => String(n).padStart(2, '0');

/** Ways of writing an instant. */
const timeWriters: readonly ((time: number) => string)[] = [
  (time) => new Date(time).toISOString(),
  (time) => new Date(time).toISOString().slice(0, 19),
  (time) => `${new Date(time).toISOString().slice(0, 19)}Z`,
  (time) => `${new Date(time + 7_200_000).toISOString().slice(0, 19)}+02:00`,
  (time) => new Date(time).toISOString().slice(0, 16).replace('T', ' '),
  (time) => String(time),
  (time) => (time / 1000).toFixed(3),
  (time) => String(Math.floor(time / 1000)),
];
const dayFirst = (time: number): string => {
  const date = new Date(time);
  return `${two(date.getUTCDate())}.${two(date.getUTCMonth() + 1)}.${date.getUTCFullYear()} ${two(date.getUTCHours())}:${two(date.getUTCMinutes())}:${two(date.getUTCSeconds())}`;
};

/** Cells, the usual ones most of the time. */
const cell = fc.oneof(
  {
    weight: 12,
    arbitrary: fc
      .tuple(fc.integer({ min: -300, max: 12000 }), fc.integer({ min: 0, max: 3 }))
      .map(([n, d]) => (n / 10 ** d).toFixed(d)),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '',
      '',
      'NaN',
      'NA',
      'null',
      'nan',
      'NULL',
      '35 %',
      '35%',
      ' 7 ',
      '-0',
      '-0.0',
      '5.',
      '.5',
      '-.25',
      '+3',
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '"35.5"',
      '"3,5"',
      '"NaN"',
      '" 4 %"',
      '"a ""b"""',
      '1e3',
      '1.5E-2',
      '1e309',
      '-',
      '.',
      '%',
      '1.2.3',
      '1,2,3',
      '0x1F',
      'Infinity',
      'abc',
      '−5',
      '12 34',
      '9007199254740993',
      '123456789012345678',
      '0.12345678901234567890123',
      '"',
      '5"',
    ),
  },
);

/** Logs with many small faults. */
export const logText: fc.Arbitrary<LogText> = fc
  .record({
    separator: fc.constantFrom(',', ';', '\t'),
    writer: fc.integer({ min: 0, max: timeWriters.length }),
    comma: fc.boolean(),
    lineEnd: fc.constantFrom('\n', '\r\n'),
    lastEnd: fc.boolean(),
    mark: fc.boolean(),
    quotes: fc.boolean(),
    zone: fc.constantFrom('UTC', 'Europe/Lisbon', 'America/Chicago'),
    start: fc.constantFrom(Date.UTC(2027, 0, 4), Date.UTC(2027, 9, 31, 0, 20), Date.UTC(2027, 2, 28, 0, 50)),
    step: fc.constantFrom(1000, 60_000, 97_000),
    rows: fc.array(fc.tuple(cell, cell, fc.constantFrom('', 'ok', 'door "B"', '"x;y,z"')), {
      minLength: 3,
      maxLength: 60,
    }),
    faults: fc.array(fc.tuple(fc.nat(), fc.constantFrom('double', 'swap', 'cut', 'empty', 'dash', 'more', 'back')), {
      maxLength: 8,
    }),
  })
  .map(({ separator, writer, comma, lineEnd, lastEnd, mark, quotes, zone, start, step, rows, faults }) => {
    const write = timeWriters[writer] ?? dayFirst;
    const quoted = (text: string) => (quotes && !text.includes('"') ? `"${text}"` : text);
    const decimal = (text: string) => (comma && separator !== ',' ? text.replace('.', ',') : text);
    let lines = rows.map(([a, b, note], row) =>
      [write(start + row * step), decimal(a), note, decimal(b)].map(quoted).join(separator),
    );
    for (const [where, fault] of faults) {
      const at = where % lines.length;
      const line = lines[at] ?? '';
      if (fault === 'double') lines.splice(at, 0, line);
      if (fault === 'cut') lines[at] = line.slice(0, where % (line.length + 1));
      if (fault === 'empty') lines.splice(at, 0, '');
      if (fault === 'dash') lines.splice(at, 0, '---');
      if (fault === 'more') lines[at] = `${line}${separator}1`;
      if (fault === 'swap' && at > 0)
        lines = [...lines.slice(0, at - 1), line, lines[at - 1] ?? '', ...lines.slice(at + 1)];
      if (fault === 'back') lines.push(line);
    }
    const header = ['time', 'b1', 'note', 'b2'].join(separator);
    const text = `${mark ? '\ufeff' : ''}${[header, ...lines].join(lineEnd)}${lastEnd ? lineEnd : ''}`;
    return { text, site: { timeZone: zone, ...(write === dayFirst ? { timeFormat: 'day-first' } : {}) } };
  });
