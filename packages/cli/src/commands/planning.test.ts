import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Io } from '../io.js';
import { main } from '../main.js';

/* The commands for planning: plan, budget, tradeoff. */

let folder = '';
const path = (name: string): string => join(folder, name);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
  const rows = Array.from({ length: 3000 }, (_, row) => `${1.8e9 + row * 2},${row > 1000 && row < 1010 ? 40 : 100}`);
  await writeFile(path('log.csv'), `time,b1\n${rows.join('\n')}\n`);
  const beam = { id: 'B1', layout: 'reflective', separation: 60 };
  await writeFile(path('site.json'), JSON.stringify({ format: 'beamkeep-site/1', beams: [beam] }));
  await writeFile(path('burn.csv'), 'time_s,heat_kw\n0,0\n120,300\n240,300\n');
  await writeFile(path('bad.csv'), 'time_s,heat_kw\n0,0\n120,many\n');
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: (async function* () {})(),
    stdout: { write: (text) => (out += text), columns: 100 },
    stderr: { write: (text) => (err += text) },
    env: {},
  };
  return { code: await main(args, io), out, err };
}

const hall = ['--length', '62', '--width', '40', '--height', '12'];
const optics = [
  ...['--separation', '62', '--nearest', '8', '--farthest', '100'],
  ...['--divergence', '1.2', '--receiver', '0.03', '--half-angle', '0.5'],
];
const weigh = () => ['tradeoff', '--site', path('site.json'), '--ceiling', '12', '--area', '1800', '--seconds', '300'];

describe('beamkeep plan', () => {
  it('prints rows, figures with their places, warnings and who decides', async () => {
    const { code, out } = await run('plan', ...hall);
    expect(code).toBe(0);
    expect(out).toContain('3 beams in 3 rows.');
    expect(out).toContain('BS 5839-1:2025');
    expect(out).toContain('(from memory)');
    expect(out).toContain('licensed people');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it('prints the plan as JSON', async () => {
    const { out } = await run(
      'plan',
      ...hall,
      '--rules',
      'gb50116',
      '--set',
      'betweenBeams=10',
      '--set',
      'toSide=5',
      '--json',
    );
    const plan = JSON.parse(out);
    expect(plan.format).toBe('beamkeep-plan/1');
    expect(plan.beams).toHaveLength(4);
    expect(plan.ruleSet.figures[0]).toMatchObject({ name: 'betweenBeams', value: 10, seen: 'given' });
  });

  it('writes both drawings, and not over files that are there', async () => {
    const args = [
      'plan',
      ...hall,
      '--apex',
      '15',
      '--lower',
      '8',
      '--plan-svg',
      path('p.svg'),
      '--section-svg',
      path('s.svg'),
    ];
    expect((await run(...args)).out).toContain('Written: ');
    expect(await readFile(path('s.svg'), 'utf8')).toContain('<svg');
    expect(await run(...args)).toMatchObject({ code: 2, out: '' });
    expect((await run(...args, '--force')).code).toBe(0);
  });

  it.each([
    [['--width', '40', '--height', '12'], '--length <metres> is missing'],
    [[...hall, '--gradient', '1'], '--gradient and --roof-warmer need --fire-kw'],
    [[...hall, '--set', 'between=3'], 'figure "between" is not known'],
    [[...hall, '--set', 'toSide'], 'It must be a number'],
    [[...hall, '--set', '=3'], 'name=1.5'],
    [[...hall, '--rules', 'local'], 'Allowed choices are bs5839-1'],
    [[...hall, '--lower', '6,x'], 'It must be a number'],
    [[...hall, '--below', '13'], 'it must lie between'],
  ])('%j is refused: %s', async (args, says) => {
    const { code, out, err } = await run('plan', ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
    expect(err).toContain(says);
  });

  it('tells what warm air does', async () => {
    const { out } = await run('plan', ...hall.slice(0, 4), '--height', '20', '--gradient', '1', '--fire-kw', '20');
    expect(out).toContain('smoke of 20 kW stops at 11.72 m');
    const roof = await run('plan', ...hall.slice(0, 4), '--height', '20', '--roof-warmer', '10', '--fire-kw', '20');
    expect(roof.out.replace(/\s+/g, ' ')).toContain('keeps smoke out until the fire gives 60 kW');
  });
});

describe('beamkeep budget', () => {
  const reflector = ['--reflector', '0.2', '--spread', '0.4'];
  it('prints both bars, and the smoke that alarms', async () => {
    const { code, out } = await run('budget', ...optics, ...reflector, '--dirt', '20', '--svg', path('b.svg'));
    expect(code).toBe(0);
    expect(out).toContain('Received light, nearest to farthest range');
    expect(out).toMatch(/\|R+D+\.+\|/);
    expect(out).toMatch(/18\.[78] % of smoke alarms/);
    expect(await readFile(path('b.svg'), 'utf8')).toContain('Loss budget of a beam');
  });
  it('says when no smoke is needed any more', async () => {
    const { out } = await run('budget', ...optics, '--dirt', '40');
    expect(out).toContain('No smoke is needed');
    expect(out).toContain('without smoke');
  });
  it('prints the budget as JSON', async () => {
    const budget = JSON.parse((await run('budget', ...optics, '--json')).out);
    expect(budget).toMatchObject({ format: 'beamkeep-budget/1', smokeToAlarm: 35 });
  });
  it.each([
    [[...optics, '--reflector', '0.1'], '--reflector needs --spread'],
    [[...optics, '--spread', '0.1'], '--spread needs --reflector'],
    [optics.slice(2), '--separation <metres> is missing'],
    [[...optics, '--threshold', '0'], 'alarmThreshold 0 %'],
  ])('%j is refused: %s', async (args, says) => {
    const { code, err } = await run('budget', ...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});

describe('beamkeep tradeoff', () => {
  it('weighs the log: time to alarm, size, nuisance, limits, who decides', async () => {
    const { code, out } = await run(...weigh(), path('log.csv'), '--svg', path('t.svg'));
    expect(code).toBe(0);
    expect(out).toContain('35 % held for 10 s');
    expect(out).toContain('At the current setting it alarmed 1 time:');
    expect(out).toMatch(
      /No other setting beats these in both costs.*\n.*limits\n(.* % .* s .* \(.* to .*\) .* \(.* to .*\) .*(kept|outside [a-e].*)\n)+/,
    );
    expect(out).toMatch(/ a\. threshold at least 8\.8 %/);
    expect(out).toContain('EN 54-12');
    expect(out).toContain('licensed people');
    expect(out).toContain('Input: 3 001 lines');
    expect(await readFile(path('t.svg'), 'utf8')).toContain('now: 35 %, 10 s');
  });

  it('without a log it tells the fires only', async () => {
    const { out } = await run(...weigh(), '--fire', 'fast:heptane', '--fire', '5kW', '--gradient', '2');
    expect(out).toContain('No log was given');
    expect(out).toContain('heptane');
    expect(out).toContain('not found while it was watched');
  });

  it('takes a heat release curve and its own axes, and prints JSON', async () => {
    const args = ['--curve', path('burn.csv'), '--thresholds', '20,35', '--delays', '5,10,15', '--json'];
    const { beams, format, input } = JSON.parse((await run(...weigh(), ...args)).out);
    expect({ format, input }).toEqual({ format: 'beamkeep-tradeoff/1', input: null });
    expect(beams[0].fires).toHaveLength(1);
    expect(beams[0].fires[0].cells).toHaveLength(2);
    const own = await run(...weigh(), ...args.with(3, '20,50'));
    expect(JSON.parse(own.out).beams[0].thresholds).toEqual([20, 35, 50]);
    expect(beams[0].fires[0].cells[0][0].seconds.value).toBeGreaterThan(5);
  });

  it.each([
    [['--fire', 'quick'], 'fire "quick" is not known'],
    [['--beam', 'B9'], 'beam "B9" is not in the site'],
    [['--curve', 'nowhere.csv'], 'nowhere.csv: cannot be read'],
    [['--thresholds', '35,20', 'LOG'], 'must rise'],
  ])('%j is refused: %s', async (args, says) => {
    const { code, out, err } = await run(...weigh(), ...args.map((each) => (each === 'LOG' ? path('log.csv') : each)));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(says);
  });

  it('names the line of a curve that is wrong', async () => {
    expect((await run(...weigh(), '--curve', path('bad.csv'))).err).toContain(
      'bad.csv:3: "120,many" is not two numbers',
    );
    expect((await run('tradeoff', '--site', path('site.json'), '--area', '10')).err).toContain(
      '--ceiling <metres> is missing',
    );
  });
});
