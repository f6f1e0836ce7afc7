import { describe, expect, it } from 'vitest';
import { random } from '../../simulation/index.js';
import { parseSite } from '../../site/index.js';
import type { AimScan } from './aimScan.js';
import { scanReport } from './scanReport.js';

const beamOf = (settings: object = {}) => {
  const [beam] = parseSite({
    beams: [{ id: 'B1', layout: 'reflective', separation: 62, covered: 0, ...settings }],
  }).beams;
  if (!beam) throw new Error('no beam');
  return beam;
};

/** A scan of a Gaussian lobe of half-angle 0.7 about 0.1 degrees, and what is put on top [% of the peak]. */
function scanned(more: (angle: number) => number = () => 0, spread = 0.3): AimScan {
  const chance = random(3, 'scan');
  const angles = Float64Array.from({ length: 61 }, (_, k) => -1.8 + 0.06 * k);
  const power = angles.map(
    (angle) => 100 * 2 ** -(((angle - 0.1) / 0.7) ** 2) + more(angle) + spread * chance.normal(),
  );
  return { axes: ['pan'], angles: [angles], power, readings: power, notes: [] };
}

/** The same over two axes, half-angles 0.7 and 0.5. */
function raster(): AimScan {
  const chance = random(3, 'raster');
  const places = Array.from({ length: 15 }, (_, i) => -1.4 + 0.2 * i);
  const pan = Float64Array.from(places.flatMap((x) => places.map(() => x)));
  const tilt = Float64Array.from(places.flatMap(() => places));
  const power = pan.map(
    (x, row) =>
      100 * 2 ** -(((x - 0.1) / 0.7) ** 2 + (((tilt[row] as number) + 0.2) / 0.5) ** 2) + 0.3 * chance.normal(),
  );
  return { axes: ['pan', 'tilt'], angles: [pan, tilt], power, readings: power, notes: [] };
}

const threshold = -10 * Math.log10(0.65);
const L = 10 * Math.log10(2);

describe('scanReport', () => {
  it('margin on the flank by the closed form, in degrees and at the far end', () => {
    const { alarm, offset, loss, words } = scanReport(scanned(), beamOf(), { left: [0.6] });
    const start = 0.5 / 0.7;
    const edge = Math.sqrt(start ** 2 + threshold / L);
    expect(offset[0]?.value).toBeCloseTo(0.5, 2);
    expect(loss?.value).toBeCloseTo(L * start ** 2, 1);
    expect(alarm.degrees.value).toBeCloseTo((edge - start) * 0.7, 2);
    expect(alarm.degrees.low).toBeLessThan((edge - start) * 0.7);
    expect(alarm.degrees.high).toBeGreaterThan((edge - start) * 0.7);
    expect(alarm.millimetres.value).toBeCloseTo(62_000 * Math.tan((alarm.degrees.value * Math.PI) / 180), 6);
    expect(alarm.degreesOnPeak).toBeCloseTo(0.7 * Math.sqrt(threshold / L), 2);
    expect(words.verdict).toBe('look again');
    expect(words.sentences.join(' ')).toMatch(
      /left on the flank: 0\.5\d* degrees off the peak, which costs 1\.5\d* dB/,
    );
  });
  it('on the peak is good, with more margin before the fault than before the alarm', () => {
    const { alarm, fault, words } = scanReport(scanned(), beamOf(), { left: [0.1] });
    expect(words).toMatchObject({ verdict: 'good', actions: [] });
    expect(fault.degrees.value).toBeGreaterThan(alarm.degrees.value);
    expect(fault.degreesOnPeak).toBeCloseTo(0.7 * Math.sqrt(10 / L), 1);
  });
  it('over two axes the shortest way out counts, not the way along an axis', () => {
    const { alarm, offset, fit } = scanReport(raster(), beamOf(), { left: [0.1, -0.2] });
    expect(fit.axes.map(({ halfAngle }) => halfAngle.value)).toEqual([expect.closeTo(0.7, 2), expect.closeTo(0.5, 2)]);
    expect(offset.map(({ value }) => Math.abs(value))).toEqual([expect.closeTo(0, 1), expect.closeTo(0, 1)]);
    expect(alarm.degrees.value).toBeCloseTo(0.5 * Math.sqrt(threshold / L), 1);
    expect(alarm.degrees.value).toBeLessThan(0.45);
  });
  it('without the place where it was left, tells the peak only and says so', () => {
    const { loss, words } = scanReport(scanned(), beamOf(), {});
    expect(loss).toBeUndefined();
    expect(words.verdict).toBe('not known');
    expect(words.sentences[0]).toContain('is not told');
  });
  it('a stray reflection is flagged with its place', () => {
    const stray = (angle: number) => 12 * 2 ** -(((angle - 1.4) / 0.15) ** 2);
    const { fit, words } = scanReport(scanned(stray), beamOf(), { left: [0.1] });
    expect(fit.flags.map(({ kind }) => kind)).toContain('second-peak');
    expect(words.verdict).toBe('look again');
    expect(words.sentences[0]).toMatch(/second peak stands at 1\.(3|4)\d* degrees/);
    expect(words.actions[0]).toContain('a peak that stays is not the reflector');
  });
  it('a residue that the equipment sees takes from the margin, and can leave none to tell', () => {
    const margin = (covered: number, coveredSubtracted = false) =>
      scanReport(
        scanned(() => covered),
        beamOf({ covered, coveredSubtracted }),
        { left: [0.1] },
      ).alarm.degrees.value;
    expect(margin(40)).toBeGreaterThan(margin(0));
    expect(margin(40, true)).toBeCloseTo(margin(0), 1);
    expect(margin(70)).toBe(Number.POSITIVE_INFINITY);
  });
  it('takes the floor of the scan for the residue where nobody covered the reflector', () => {
    const { residue, words } = scanReport(
      scanned(() => 10),
      { ...beamOf(), covered: undefined } as never,
      { left: [0.1] },
    );
    expect(residue.from).toBe('scan');
    expect(residue.share).toBeCloseTo(10 / 110, 2);
    expect(words.actions.join(' ')).toContain('covered test');
  });
  it('a floor below nothing is no residue', () => {
    const { residue } = scanReport(
      scanned(() => -1, 0.05),
      { ...beamOf(), covered: undefined } as never,
      { left: [0.1] },
    );
    expect(residue).toEqual({ share: 0, from: 'scan' });
  });
  it('on the flank the floor is more of what comes back there', () => {
    const share = (left: number) =>
      scanReport(
        scanned(() => 10),
        { ...beamOf(), covered: undefined } as never,
        { left: [left] },
      ).residue.share;
    expect(share(0.8)).toBeCloseTo(10 / 60, 2); // a half-angle off: 50 and 10
    expect(share(0.1)).toBeCloseTo(10 / 110, 2);
  });
  it('the covered reading of the site file explains a floor; none does not', () => {
    const kinds = (covered: number) =>
      scanReport(
        scanned(() => 10),
        beamOf({ covered }),
        { left: [0.1] },
      ).fit.flags.map(({ kind }) => kind);
    expect(kinds(10)).toEqual([]);
    expect(kinds(0)).toEqual(['raised-floor']);
  });
  it('readings that a coarse scale cuts level are no saturated receiver, where the step is told', () => {
    const coarse = scanned(() => 0, 0);
    const power = coarse.power.map((value) => 8 * Math.round(value / 8));
    const kinds = (step?: number) =>
      scanReport({ ...coarse, power }, beamOf(), { left: [0.1], step }).fit.flags.map(({ kind }) => kind);
    expect(kinds(8)).toEqual([]);
  });
  it('the turn off the peak has its sign, and limits about it', () => {
    const { offset } = scanReport(scanned(), beamOf(), { left: [-0.3] });
    expect(offset[0]?.value).toBeCloseTo(-0.4, 2);
    expect(offset[0]?.low).toBeLessThan(-0.4);
    expect(offset[0]?.high).toBeGreaterThan(-0.4);
    expect(scanReport(scanned(), beamOf(), {}).offset).toEqual([]);
  });
  it('the structure against the margin: IBC and AISC limits, and bow and growth where they are told', () => {
    const structure = {
      spanMetres: 24,
      heightMetres: 9.4,
      depthMetres: 0.5,
      gradientKelvin: 10,
      lengthMetres: 60,
      warmingKelvin: 40,
    };
    const { moves, words, alarm } = scanReport(scanned(), beamOf(), { left: [0.1], structure });
    expect(moves.map(({ degrees }) => degrees)).toEqual([
      expect.closeTo(1.0186, 4), // span/180
      expect.closeTo(0.9548, 4), // height/60
      expect.closeTo(0.5729, 4), // height/100
      expect.closeTo(0.165, 3), // 2.88 mrad
      expect.closeTo(0.0266, 4), // 28.8 mm seen from 62 m
    ]);
    for (const { degrees, share } of moves) expect(share).toBeCloseTo(degrees / alarm.degrees.value, 10);
    expect(moves.map(({ verdict }) => verdict)).toEqual(['beyond', 'beyond', 'beyond', 'within', 'within']);
    expect(words.sentences.join(' ')).toContain('more than the margin');
    expect(words.actions.join(' ')).toContain('structural engineer');
  });
});
