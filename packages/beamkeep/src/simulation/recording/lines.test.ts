import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { simulate } from '../simulate.js';
import { plainRecording, type Recording } from './recording.js';

const log = (changes: Partial<Recording>, step = 0.1) => [
  ...simulate(
    plainScenario(
      { samples: 2000, recording: { ...plainRecording, ...changes }, temperature: { column: 't_roof', step: 0.1 } },
      { step },
    ),
    1,
  ).lines(),
];

describe('lines', () => {
  it('writes a header and a line a sample', () => {
    const lines = log({});
    expect(lines[0]).toBe('time,b1,t_roof\n');
    expect(lines.length).toBe(2001);
    expect(lines[1]).toMatch(/^2027-01-04T00:00:00Z,\d+\.\d,-?\d+\.\d\n$/);
  });

  it('writes decimal commas, percent signs, byte-order marks and other line ends', () => {
    const lines = log({
      separator: ';',
      decimalComma: true,
      percentSign: true,
      byteOrderMark: true,
      lineEnd: '\r\n',
      sideFirst: true,
    });
    expect(lines[0]).toBe('\ufefftime;t_roof;b1\r\n');
    expect(lines[1]).toMatch(/^2027-01-04T00:00:00Z;-?\d+,\d;\d+,\d %\r\n$/);
  });

  it('loses, doubles, displaces and breaks lines about as often as asked, and spares the first', () => {
    const count = (changes: Partial<Recording>) => log(changes).length - 1;
    expect(count({ lost: 0.1 })).toBeLessThan(1870);
    const doubled = log({ doubled: 0.1 }).filter((line) => line.split('\n').length === 3);
    expect(doubled.length).toBeGreaterThan(130);
    const displaced = log({ displaced: 0.1 });
    expect(displaced.length).toBe(2001);
    expect([...displaced.slice(1)].sort()).not.toEqual(displaced.slice(1));
    expect([...displaced.slice(1)].sort()).toEqual(log({}).slice(1));
    const broken = log({ broken: 0.1 }).filter(
      (line) => !/^(time|2027-01-0\dT\d\d:\d\d:\d\dZ,[\d.]+,-?[\d.]+$)/m.test(line),
    );
    expect(broken.length).toBeGreaterThan(130);
    expect(log({ lost: 1 }).length).toBe(2);
  });

  it('writes one reading a line in long form', () => {
    const lines = log({ longForm: true });
    expect(lines[0]).toBe('time,name,value\n');
    expect(lines[1]).toMatch(/^2027-01-04T00:00:00Z,b1,[\d.]+\n2027-01-04T00:00:00Z,t_roof,-?[\d.]+\n$/);
  });

  it('writes changes only when asked', () => {
    const lines = log({ sampling: 'on-change' }, 1);
    expect(lines.length).toBeLessThan(1900);
    const cells = lines.slice(1).map((line) => line.slice(line.indexOf(',')));
    for (let i = 1; i < cells.length - 1; i++) expect(cells[i]).not.toBe(cells[i - 1]);
  });
});
