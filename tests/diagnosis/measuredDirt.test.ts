import { describe, expect, it } from 'vitest';
import { day } from '../../packages/beamkeep/src/columns/index.js';
import { diagnoseBeams } from '../../packages/beamkeep/src/diagnosis/index.js';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';
import { diagnosed, measured, recordOf, stated, theOne } from './kit.js';
import { cellsOf, measuredFile } from './measuredFiles.js';

/*
 * Dirt as it was measured: specular reflectance of mirrors outdoors, in per cent, twice a day. Light crosses the dirt
 * of a mirror twice, so the ratio to the first clean value is the transmittance of a reflective beam as it stands.
 *
 * Source: repository cholette/mirror_soiling_data (MIT); Picotti and others, Solar Energy 263 (2023) 111945.
 */

/** A mirror's clean share at its instants, first value 1. */
function mirror(file: string, column: string): { time: number[]; level: number[] } {
  const [header = [], ...rows] = cellsOf(`soiling-mirror-${file}`);
  const k = header.indexOf(column);
  const seen = rows.filter((row) => (row[k] ?? '') !== '');
  const clean = Number(seen[0]?.[k]);
  return { time: seen.map((row) => Date.parse(`${row[0]}Z`)), level: seen.map((row) => Number(row[k]) / clean) };
}

/** Share of the light lost a day between the first and the last reading [%/day]. */
function ownRate({ time, level }: ReturnType<typeof mirror>): number {
  const days = ((time.at(-1) ?? 0) - (time[0] ?? 0)) / day;
  return (100 * ((level.at(-1) ?? 1) - 1)) / days;
}

/** The course between the readings, straight, as a beam that is sampled every half hour would see it. */
function beamOf(course: ReturnType<typeof mirror>) {
  const { time, level } = course;
  const [first = 0] = time;
  return recordOf(
    (t) => {
      const k = Math.max(
        1,
        time.findIndex((at) => at > t),
      );
      const [a = 0, b = 0] = [time[k - 1], time[k]];
      const share = b > a ? (t - a) / (b - a) : 0;
      return (level[k - 1] ?? 1) * (1 - share) + (level[k] ?? 1) * share;
    },
    { days: ((time.at(-1) ?? first) - first) / day, start: first, intervalSeconds: 1800 },
  );
}

describe('dirt as it was measured', () => {
  // Mirrors that faced up and lost 2 % or more within their campaign.
  it.each([
    ['port-augusta-20230826-20230901', 't00_reflectance_pct'],
    ['port-augusta-20230826-20230901', 't30_reflectance_pct'],
    ['mount-isa-20200901-20200908', 'on_m2_t05_reflectance_pct'],
    ['mount-isa-20200901-20200908', 'oe_m5_t05_reflectance_pct'],
    ['mount-isa-20200901-20200908', 'os_m2_t30_reflectance_pct'],
    ['ablrf-20230419-20230423', 'oe_m4_t30_reflectance_pct'],
  ])('%s, %s is contamination, at the rate of its own readings', (file, column) => {
    const course = mirror(file, column);
    const found = theOne(diagnosed(beamOf(course)), 'contamination');
    expect(measured(found, 'slope') / ownRate(course)).toBeGreaterThan(0.6);
    expect(measured(found, 'slope') / ownRate(course)).toBeLessThan(1.4);
  });
  it('a mirror that stood upright and lost nothing is none', () =>
    expect(
      stated(diagnosed(beamOf(mirror('mount-isa-20200901-20200908', 'oe_m1_t90_reflectance_pct'))), 'contamination'),
    ).toEqual([]));
  it('the file is read as a log as it stands: local times, one column a beam', async () => {
    const file = 'soiling-mirror-mount-isa-20200901-20200908';
    const column = 'on_m2_t05_reflectance_pct';
    const cleanAir = Number(cellsOf(file)[1]?.[cellsOf(file)[0]?.indexOf(column) ?? 0]);
    const site = parseSite({
      format: 'beamkeep-site/1',
      timeZone: 'Australia/Brisbane',
      beams: [{ id: 'M2', layout: 'reflective', separation: 1, signalColumn: column, cleanAir }],
    });
    const { records } = await readTraces(logOfText(measuredFile(file)), site);
    const [found] = diagnoseBeams(records, site);
    const dirt = theOne(found ?? { findings: [] }, 'contamination');
    expect(measured(dirt, 'slope') / ownRate(mirror('mount-isa-20200901-20200908', column))).toBeCloseTo(1, 0);
  });
});

describe('movement as it was measured', () => {
  /*
   * Roll of a box on a strut of a road bridge, in degrees, as the turn of a head whose received level halves at one
   * degree and that stands so far off its peak. Runs of three or four days; single readings spread by a third of a
   * degree, the sensor's own.
   *
   * Source: repository MNiMORPH/Trout-Creek-stream-gauge (CC BY 4.0).
   */
  const turned = (run: string, offset: number) => {
    const rows = cellsOf('movement-bridge-mount').filter(([name]) => name === run);
    const roll = rows.map((row) => Number(row[5]));
    const middle = [...roll].sort((a, b) => a - b)[roll.length >> 1] ?? 0;
    const time = Float64Array.from(rows, (row) => Date.parse(row[1] ?? ''));
    const level = Float64Array.from(roll, (r) => 10 ** (-0.30103 * (offset + r - middle) ** 2));
    const single = Float32Array.from(level);
    const flat = { spread: new Float32Array(time.length), count: new Uint32Array(time.length).fill(1) };
    return {
      ...recordOf(() => 1, { days: 1 }),
      trace: { time, until: time, level, low: single, high: single, ...flat },
    };
  };
  it.each([
    ['a', 0.3],
    ['a', 0.6],
    ['a', 1],
    ['b', 0.6],
    ['b', 1],
    ['c', 0.3],
  ])('run %s, %f half-angles off the peak, is building movement', (run, offset) =>
    expect(stated(diagnosed(turned(run, offset)), 'building-movement')).toHaveLength(1),
  );
});
