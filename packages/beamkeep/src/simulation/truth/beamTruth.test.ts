import { describe, expect, it } from 'vitest';
import { day, hour, minute } from '../../columns/index.js';
import type { Effect } from '../effects/effect.js';
import { plainScenario } from '../plainScenario.js';
import { plainRecording } from '../recording/recording.js';
import type { BeamPlan, Scenario } from '../scenario.js';
import { simulate } from '../simulate.js';

const { start } = plainScenario();
const truth = (effects: readonly Effect[], changes: Partial<Scenario> = {}, beam: Partial<BeamPlan> = {}) => {
  const [only] = simulate(
    plainScenario({ samples: 30 * 288, intervalSeconds: 300, ...changes }, { ...beam, effects }),
    1,
  ).beams;
  if (!only) throw new Error('no beam');
  return only.truth;
};
const iso = (instant: number) => new Date(instant).toISOString();
const dirt = { effect: 'dirt', stream: 'd', before: 0, workDaysOnly: false, bursts: 0, uneven: 0 } as const;

describe('beamTruth', () => {
  it('asks for nothing of a healthy beam', () => {
    expect(truth([]).causes).toEqual([]);
  });

  it('labels dirt from wash to wash, and the wash at the first sample after', () => {
    const time = start + 15 * day + 2 * minute;
    const { causes } = truth([{ ...dirt, rate: 0.4, cleanings: [{ time, leaves: 0, by: 'hand' }] }]);
    expect(causes.map(({ cause }) => cause)).toEqual(['contamination', 'contamination', 'cleaned']);
    expect(causes[0]).toMatchObject({ start: iso(start), end: iso(start + 15 * day), gained: 6 });
    expect(causes[1]?.start).toBe(iso(start + 15 * day + 5 * minute));
    expect(causes[2]).toMatchObject({ start: iso(start + 15 * day + 5 * minute), magnitude: 6, how: 'cleaned' });
  });

  it('keeps dirt below the limit as a trace, near the rule or not', () => {
    expect(truth([{ ...dirt, rate: 0.03, cleanings: [] }]).traces).toContainEqual(
      expect.objectContaining({ cause: 'contamination', near: true }),
    );
    const little = truth([{ ...dirt, rate: 0.01, cleanings: [] }]);
    expect(little.causes).toEqual([]);
    expect(little.traces).toContainEqual(expect.objectContaining({ cause: 'contamination', near: false }));
  });

  it('labels a knock from the first sample after it to the last before it is aimed again', () => {
    const effect: Effect = {
      effect: 'knock',
      time: start + 5 * day + 1,
      turn: [0.5, 0],
      settles: 0,
      aimedAgain: start + 20 * day + 1,
      leaves: 0,
    };
    const { causes } = truth([effect]);
    expect(causes[0]).toMatchObject({
      cause: 'misalignment-step',
      start: iso(start + 5 * day + 5 * minute),
      end: iso(start + 20 * day),
    });
    expect(causes[0]?.magnitude).toBeCloseTo(100 * (1 - 2 ** -0.25), 0); // half a half-angle: a quarter of 3.01 dB
    expect(causes[1]).toMatchObject({ cause: 'cleaned', how: 'realigned' });
  });

  it('labels creeping aim that accelerates, and lets it pass for dirt where nothing tells', () => {
    const creep = (power: number, offset: number) =>
      truth(
        [{ effect: 'creep', from: start, to: start + 30 * day, turn: [0.5, 0], power }],
        {},
        { offset: [offset, 0] },
      ).causes[0];
    expect(creep(1, 0)).toMatchObject({ cause: 'misalignment-drift', accelerates: true });
    expect(creep(0.9, 0.9)).toMatchObject({ accelerates: false, swayGrows: false, accepts: ['contamination'] });
  });

  it('labels movement on three days and a tenth of all days', () => {
    const roof = {
      effect: 'movement',
      stream: 'm',
      reach: 2,
      direction: 0,
      lag: 1,
      across: 0,
      acrossLag: 1,
      wind: 0,
      aimedAt: 0.5,
    } as const;
    const beam = { offset: [0.5, 0] } as const;
    const [found] = truth([{ ...roof, swing: 0.2 }], {}, beam).causes;
    expect(found?.cause).toBe('building-movement');
    expect(found?.episodes?.length).toBeGreaterThan(20);
    expect(truth([{ ...roof, swing: 0.004 }], {}, beam).causes).toEqual([]);
    expect(truth([{ ...roof, swing: 0.2 }], { samples: 2 * 288 }, beam).causes).toEqual([]);
  });

  it('labels each object in the path at its samples, and none that falls between two', () => {
    const standings = [
      { from: start + 3 * day + 1, to: start + 3 * day + 2 * hour, covers: 0.6, edge: 0 },
      { from: start + 9 * day + 1, to: start + 9 * day + minute, covers: 1, edge: 0 },
    ];
    const { causes, traces } = truth([{ effect: 'block', stream: 'b', standings, restless: 0 }]);
    expect(causes).toEqual([
      {
        cause: 'obstruction',
        start: iso(start + 3 * day + 5 * minute),
        end: iso(start + 3 * day + 2 * hour),
        magnitude: 60,
        unit: '% depth',
      },
    ]);
    expect(traces).toContainEqual(expect.objectContaining({ cause: 'obstruction', why: 'between two samples' }));
  });

  it('labels smoke with four samples above half its peak, and not a wisp', () => {
    const fire = (stays: number, peak: number): Effect => ({
      effect: 'smoke',
      stream: 's',
      fires: [
        {
          from: start + 4 * day,
          law: 'smouldering',
          growth: 3600,
          doublings: 5,
          peak,
          stays,
          clears: 600,
          dither: 0,
          ditherSeconds: 10,
        },
      ],
    });
    const { causes } = truth([fire(3600, 3)]);
    expect(causes[0]?.cause).toBe('smoke-like');
    expect(causes[0]?.growthSeconds).toBeGreaterThan(2000);
    expect(truth([fire(3600, 0.1)]).causes).toEqual([]);
  });

  it('labels gaps of thirty samples from the sample before to the sample after', () => {
    const gap = (hours: number): Effect => ({
      effect: 'gap',
      how: 'lines',
      stretches: [{ from: start + 2 * day, to: start + 2 * day + hours * hour }],
    });
    expect(truth([gap(6)]).causes).toEqual([
      {
        cause: 'data-gap',
        start: iso(start + 2 * day - 5 * minute),
        end: iso(start + 2 * day + 6 * hour + 5 * minute),
        magnitude: 6 * 3600 + 600,
        unit: 's',
        how: 'lines',
      },
    ]);
    expect(truth([gap(1)]).causes).toEqual([]);
  });

  it('labels noise that doubles the spread, and vibration by its frequency', () => {
    const fast = { samples: 6000, intervalSeconds: 0.1, recording: { ...plainRecording, tick: 1 } };
    const runs = [{ from: start + 2 * minute, to: start + 7 * minute }];
    const noise = truth(
      [{ effect: 'electrical-noise', stream: 'n', bursts: runs, times: 12, spikes: 0, spikeHeight: 0, grows: false }],
      fast,
    );
    expect(noise.causes[0]).toMatchObject({ cause: 'electrical-noise', start: iso(start + 2 * minute) });
    expect(noise.causes[0]?.magnitude).toBeCloseTo(12, 0);
    const shake: Effect = { effect: 'vibration', stream: 'v', frequency: 2, turn: [0.1, 0], wander: 0, runs, duty: 1 };
    expect(truth([shake], fast, { offset: [0.5, 0] }).causes[0]).toMatchObject({ cause: 'vibration', hertz: 2 });
  });

  it('names dust that passed the alarm threshold as what could be smoke', () => {
    const work: Effect = {
      effect: 'aerosol',
      stream: 'w',
      depth: 4,
      uneven: 0.1,
      active: 1,
      puffs: 6,
      rises: 8,
      clears: 40,
      ragged: 0.1,
      hours: [0, 1],
    };
    const { causes, couldBeSmoke } = truth([work]);
    expect(causes[0]?.cause).toBe('process-aerosol');
    expect(couldBeSmoke.length).toBeGreaterThan(10);
  });

  it('tells the day on which the dirt of a cut log reaches the threshold', () => {
    const { forecast } = truth([{ ...dirt, rate: 0.5, cleanings: [] }], { kind: 'truncated' });
    expect(forecast).toEqual({ obscuration: 35, date: '2027-03-15', model: 'linear' }); // 70 days from 4 January
    const never = truth([{ ...dirt, rate: 0.5, most: 20, cleanings: [] }], { kind: 'truncated' });
    expect(never.forecast).toMatchObject({ date: null, never: true });
  });

  it('leaves out what the gain control hides, unless the gain is logged', () => {
    const slow: Effect = { ...dirt, rate: 0.25, cleanings: [] };
    const control = { hours: 20, limitDecibels: 3 };
    expect(truth([slow], {}, { gainControl: control }).causes).toEqual([]);
    expect(truth([slow], {}, { gainControl: { ...control, column: 'gain' } }).causes[0]?.cause).toBe('contamination');
  });
});
