import { describe, expect, it } from 'vitest';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';
import type { ComparedBeam } from './compare.js';
import { compared, labelled, said } from './examples.js';
import { floors, standing } from './floors.js';
import { score as allFigures, type Score } from './score.js';
import { mistakes, scoreTable } from './table.js';

const score = (beams: readonly ComparedBeam[]): Score =>
  allFigures(
    beams,
    causeWords,
    beams.reduce((sum, { events }) => sum + events.length, 0),
  );
const year = 60 / 365.25; // one beam of the examples

describe('score', () => {
  it('gives full marks to the truth itself, for every cause', () => {
    const beams = causeWords.map((cause, row) =>
      compared({ causes: [labelled(cause, row, row + 2)] }, [said(cause, row, row + 2, { confidence: 1 })]),
    );
    const figures = score(beams);
    expect(figures.macroF1.value).toBe(1);
    expect(figures.localisation.value).toBe(1);
    expect(figures.smokeRecall.value).toBe(1);
    expect(figures.falseSmokeUnexcused.value).toBe(0);
    expect(figures.calibrationError.value).toBe(0);
    expect(figures.causes.map(({ beams: n }) => n)).toEqual(causeWords.map(() => 1));
    expect(mistakes(beams)).toBe('');
  });
  it('counts hits, misses and false ones beam by beam', () => {
    const dirty = { causes: [labelled('contamination', 0, 900)] };
    const { causes } = score([
      compared(dirty, [said('contamination', 0, 900)]),
      compared(dirty, [said('contamination', 0, 900), said('contamination', 901, 990)]),
      compared(dirty, []),
      compared({}, [said('contamination', 0, 900)]),
    ]);
    const dirt = causes.find(({ cause }) => cause === 'contamination');
    expect(dirt?.precision).toMatchObject({ value: 2 / 3, n: 3 });
    expect(dirt?.recall).toMatchObject({ value: 2 / 3, n: 3 });
    expect(dirt?.f1.value).toBeCloseTo(2 / 3, 12);
  });
  it('leaves causes that no log holds out of the mean', () =>
    expect(
      score([compared({ causes: [labelled('vibration', 0, 9)] }, [said('vibration', 0, 9)])]).macroF1,
    ).toMatchObject({
      value: 1,
      n: 1,
    }));
  it('counts false smoke a year, on beams without smoke', () => {
    const dust = { couldBeSmoke: [{ start: Date.UTC(2027, 0, 1, 5), end: Date.UTC(2027, 0, 1, 7) }] };
    const figures = score([
      compared(dust, [said('smoke-like', 5, 6), said('smoke-like', 50, 51)]),
      compared({ causes: [labelled('smoke-like', 5, 6)] }, [said('smoke-like', 5, 6), said('smoke-like', 70, 71)]),
    ]);
    expect(figures.falseSmokeUnexcused.value).toBeCloseTo(2 / year, 9);
    expect(figures.falseSmokeExcused.value).toBeCloseTo(1 / year, 9);
  });
  it('counts watch and act, not notes, where nothing is at work', () => {
    const figures = score([
      compared({}, [said('vibration', 0, 9), said('condensation', 0, 9, { severity: 'note' })]),
      compared({ causes: [labelled('vibration', 0, 9)] }, [said('obstruction', 0, 9)]),
    ]);
    expect(figures.falseAlerts).toMatchObject({ n: 1 });
    expect(figures.falseAlerts.value).toBeCloseTo(1 / year, 9);
  });
  it('measures how far confidence lies from how often it is right', () => {
    const gap = { causes: [labelled('data-gap', 0, 9)] };
    const at = (confidence: number) => [said('data-gap', 0, 9, { confidence })];
    // 0.9 is right once in two, 0.2 never: (2 × 0.4 + 1 × 0.2) / 3
    const figures = score([compared(gap, at(0.9)), compared({}, at(0.9)), compared({}, at(0.2))]);
    expect(figures.calibrationError.value).toBeCloseTo((2 * 0.4 + 0.2) / 3, 12);
    expect(figures.reliability.map(({ n }) => n)).toEqual([1, 2]);
  });
  it('judges a forecast by the time left, and counts what is missing or needless', () => {
    // the log ends on 2 March; the day lies 40 days later
    const asked = { forecast: { obscuration: 35, date: '2027-04-11' } };
    const never = { forecast: { obscuration: 35, date: null } };
    const told = { median: '2027-04-15', low: '2027-04-01', high: null };
    const figures = score([
      compared(asked, [], told),
      compared(asked, [], { ...told, high: '2027-04-05' }),
      compared(asked, []),
      compared(never, [], told),
      compared(never, []),
    ]);
    expect(figures.forecastError).toMatchObject({ value: 0.1, n: 2 });
    expect(figures.forecastCoverage).toMatchObject({ value: 0.5, n: 2 });
    expect(figures.forecastMissing).toBe(1);
    expect(figures.forecastNeedless).toBe(1);
  });
  it('takes the day counted with the daily low where the truth has one', () => {
    const forecast = { obscuration: 35, date: '2027-05-01', dateWithDailyLow: '2027-04-11' };
    const told = { median: '2027-04-11', low: '2027-04-01', high: '2027-04-20' };
    expect(score([compared({ forecast }, [], told)]).forecastError.value).toBe(0);
  });
});

describe('table', () => {
  const beams = [
    compared({ causes: [labelled('contamination', 0, 900), labelled('cleaned', 901)] }, [
      said('contamination', 0, 200),
      said('vibration', 0, 9),
    ]),
  ];
  it('shows each cause and says how many labelled events were judged', () => {
    const table = scoreTable(score(beams));
    for (const cause of causeWords) expect(table).toContain(cause);
    expect(table).toContain('2 of 2 labelled events judged');
  });
  it('lists each mistake with its times', () => {
    const list = mistakes(beams).split('\n');
    expect(list[0]).toBe(
      'north-hall B1  misplaced contamination 2027-01-01T00:00:00Z to 2027-02-07T12:00:00Z, agreement 0.22',
    );
    expect(list.some((line) => line.includes('missed cleaned'))).toBe(true);
    expect(list.some((line) => line.includes('wrong vibration'))).toBe(true);
  });
});

describe('gate', () => {
  const figures = score([compared({ causes: [labelled('vibration', 0, 9)] }, [])]);
  it('tells what is below from what cannot be judged', () => {
    const standings = new Map(floors.map((floor) => [floor.name, standing(floor, figures)]));
    expect(standings.get('macro-F1')).toBe('below');
    expect(standings.get('smoke found')).toBe('nothing to judge');
  });
});
