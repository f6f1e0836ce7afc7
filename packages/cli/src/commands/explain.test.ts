import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Io } from '../io.js';
import { main } from '../main.js';

let folder = '';
const file = (name: string) => join(folder, name);
const start = Date.parse('2027-01-04T00:00:00Z');
const at = (seconds: number) => new Date(start + 1000 * seconds).toISOString();

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
  // Three days at 10 s; smoke grows on the first and on the third morning from 06:40 on.
  const rows = Array.from({ length: 3 * 8640 }, (_, row) => {
    const since = (row % 8640) * 10 - 24_000;
    const loss = row >= 8640 && row < 17_280 ? 0 : since < 0 || since > 3600 ? 0 : Math.min(60, since / 5);
    return `${at(row * 10)},${(99 - loss + 0.2 * Math.sin(row * row * 0.7)).toFixed(2)}`;
  });
  await writeFile(file('log.csv'), `time,b1\n${rows.join('\n')}\n`);
  const beam = { id: 'B1', layout: 'reflective', separation: 40, signalColumn: 'b1' };
  await writeFile(file('site.json'), JSON.stringify({ format: 'beamkeep-site/1', name: 'Depot', beams: [beam] }));
  // The alarm threshold of 35 % is passed 170 s after 06:40; the panel runs 50 s behind.
  const fires = [0, 2].map((day) => `${at(day * 86_400 + 24_000 + 170 + 10 - 50)},B1,fire`);
  await writeFile(file('events.csv'), `time;beam;what\n${fires.join('\n').replaceAll(',', ';')}\n`);
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: (async function* () {})(),
    stdout: { write: (text) => (out += text) },
    stderr: { write: (text) => (err += text) },
    env: {},
  };
  return { code: await main(args, io), out, err };
}
const log = () => [file('log.csv'), '--site', file('site.json')];

describe('beamkeep explain', () => {
  it('tells people in sentences', async () => {
    const { code, out, err } = await run('explain', ...log(), '--at', '06:40');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^Depot: why at 06:40\?\n/);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /Beam B1 smoke-like: cannot be told from smoke The beam loses light about 06:40 on 2 of 3 days.*What was found: - smoke-like \(treat as fire, .*What to do: Treat as fire.*How to part them:.*Mind: - What cannot be told from smoke counts as fire/,
    );
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
  it('tells a program in JSON', async () => {
    const { code, out } = await run('explain', ...log(), '--at', at(24_600), '--beam', 'B1', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      format: 'beamkeep-explanation/1',
      beams: [{ id: 'B1', causes: [{ cause: 'smoke-like' }] }],
    });
  });
  it.each([
    [[], '--at <time> is missing'],
    [['--at', 'soon'], '"soon" is not a time'],
    [['--at', '06:40', '--beam', 'B9'], '"B9" is no beam of the site'],
    [['--at', '2030-01-01 00:00'], 'lies outside the log'],
  ])('%j is refused: %s', async (args, says) => {
    const { code, out, err } = await run('explain', ...log(), ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
    expect(err).toContain(says);
  });
});

describe('beamkeep diagnose --events', () => {
  const events = () => ['--events', file('events.csv')];
  it("shows the panel's list beside the log, its clock worked out", async () => {
    const { code, out } = await run('diagnose', ...log(), ...events());
    expect(code).toBe(0);
    const text = out.replaceAll(/\s+/g, ' ');
    expect(text).toContain("The panel's list 2 events The panel's clock runs 50 s behind the log's (estimated)");
    expect(text).toMatch(/2027-01-04 06:43:00 B1 fire fire 3\d(\.\d)? % smoke-like/);
    expect(text).toMatch(/B1, fire, 2 times, 2027-01-04 to 2027-01-06; the first: The log agrees: /);
  });
  it('takes the difference that is given, behind as well as ahead', async () => {
    const { out } = await run('diagnose', ...log(), ...events(), '--clock-offset', '-50', '--json');
    const { clock, events: told } = JSON.parse(out);
    expect(clock).toMatchObject({ offsetSeconds: -50, source: 'given', matched: 2, of: 2, estimateSeconds: -50 });
    expect(told[0]).toEqual({
      time: at(24_130),
      beam: 'B1',
      what: 'fire',
      at: at(24_180),
      clockOffsetSeconds: -50,
      state: 'fire',
      obscuration: expect.any(Number),
      finding: { beam: 'B1', cause: 'smoke-like', start: expect.any(String) },
      words: expect.stringMatching(/^The log agrees/),
    });
  });
  it('says nothing of events where no list is given', async () => {
    const told = JSON.parse((await run('diagnose', ...log(), '--json')).out);
    expect(Object.keys(told)).toEqual(['format', 'beams', 'input']);
    expect(told.beams[0].findings[0]).not.toHaveProperty('runnerUp');
  });
  it.each([
    [['--clock-offset', '50'], '--clock-offset tells how the clock of a list stands: name the list with --events'],
    [['--events', 'none.csv'], 'none.csv: no such file'],
    [['--events', 'x.csv', '--clock-offset', 'much'], 'It must be a number'],
  ])('%j is refused: %s', async (args, says) => {
    const { code, out, err } = await run('diagnose', ...log(), ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(says);
  });
  it('reads the list from standard input only where nothing else does', async () => {
    const { code, err } = await run('diagnose', '-', '--site', file('site.json'), '--events', '-');
    expect(code).toBe(2);
    expect(err).toContain('"-" (standard input) is read already');
  });
});

describe('beamkeep diagnose --explain', () => {
  it('tells what a finding rests on, what comes second and how to part the two', async () => {
    const { out } = await run('diagnose', ...log(), '--explain');
    expect(out).toMatch(/\n {6}greatest obscuration +\d/);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /What comes second: process-aerosol \(dust, steam or exhaust from work\): not found here, but most easily mistaken for it\..*How to part them: Treat it as fire first.*If process-aerosol: .*If smoke-like: /,
    );
  });
  it('tells it to a program too', async () => {
    const { beams } = JSON.parse((await run('diagnose', ...log(), '--explain', '--json')).out);
    expect(beams[0].findings[0].runnerUp).toEqual({
      cause: 'process-aerosol',
      finding: null,
      alike: expect.any(String),
      test: expect.stringMatching(/^Treat it as fire first/),
      outcomes: [
        { cause: 'process-aerosol', looks: expect.any(String) },
        { cause: 'smoke-like', looks: expect.any(String) },
      ],
    });
  });
});
