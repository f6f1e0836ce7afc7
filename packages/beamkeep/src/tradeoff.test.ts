import { describe, expect, it } from 'vitest';
import { logOfText } from './log/index.js';
import { fireFromWords } from './planning/index.js';
import { respond } from './respond.js';
import { parseSite, type Site } from './site/index.js';
import { countNuisance, tradeOff, tradeOffCounted, triedSettings, usualDelays, usualThresholds } from './tradeoff.js';

const minute = 60;
const start = Date.UTC(2027, 0, 4, 6);
const stamp = (second: number): string => new Date(start + second * 1000).toISOString();

/** Two days, a sample every 2 s; a mast hides 60 % of the beam for 8, 20 and 100 s, once within a test. */
function log(): string {
  const stops = [
    [3600, 8],
    [2 * 3600, 20],
    [5 * 3600, 100],
    [20 * 3600, 100],
  ];
  const lines = Array.from({ length: 86_400 }, (_, i) => {
    const second = 2 * i;
    const hidden = stops.some(([at = 0, lasts = 0]) => second >= at && second < at + lasts);
    return `${stamp(second)},${hidden ? 40 : 99.5}`;
  });
  return ['time,b1', ...lines].join('\n');
}

const site = (change: object = {}): Site =>
  parseSite({
    format: 'beamkeep-site/1',
    name: 'Tram depot (invented)',
    beams: [
      { id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1', height: 11.6, ...change },
      { id: 'B2', layout: 'reflective', separation: 62, signalColumn: 'b1' },
    ],
    visits: [
      { time: stamp(20 * 3600 - 5 * minute), until: stamp(20 * 3600 + 10 * minute), beam: 'B1', work: 'tested' },
    ],
  });

const options = {
  hall: { ceiling: 12, area: 1860 },
  places: { nearest: 0, usual: 3.75, farthest: 7.5 },
  fires: [{ fire: fireFromWords('medium:wood'), diameter: 0.5, seconds: 300 }],
};

describe('tradeOff', () => {
  it('counts the nuisance of every setting in one pass, visits left out', async () => {
    const { format, beams, input } = await tradeOff(logOfText(log()), site(), {
      ...options,
      thresholds: [35, 65],
      delays: [0, 10, 30],
    });
    expect(format).toBe('beamkeep-tradeoff/1');
    expect(beams.map(({ beam }) => beam)).toEqual(['B1', 'B2']);
    const counts = beams.map(({ nuisance }) => nuisance?.cells.map((row) => row.map(({ count }) => count)));
    expect(counts).toEqual([
      [
        [3, 2, 1],
        [0, 0, 0],
      ],
      [
        [4, 3, 2],
        [0, 0, 0],
      ],
    ]);
    expect(beams[0]?.assumed.join()).toContain('samples during visits left out');
    expect(beams[1]?.assumed.join()).toContain('height 11.7 m, 0.3 m below the ceiling');
    expect(input?.lines).toBe(86_401);
  });

  it('in two halves it is the same as in one: hall and fires change without another pass', async () => {
    const axes = { thresholds: [35, 65], delays: [0, 10, 30] };
    const counted = await countNuisance(logOfText(log()), site(), axes);
    for (const area of [1860, 500]) {
      const there = { ...options, hall: { ceiling: 12, area } };
      const whole = await tradeOff(logOfText(log()), site(), { ...there, ...axes });
      expect(tradeOffCounted(counted, site(), there)).toEqual(whole);
    }
    expect(tradeOffCounted(counted, site(), { ...options, beam: 'B2' }).beams.map(({ beam }) => beam)).toEqual(['B2']);
    expect(() => tradeOffCounted(counted, site(), { ...options, beam: 'B9' })).toThrow('beam "B9" is not in the site');
  });

  it('counts as the response does: one fire signal a stop at the current setting', async () => {
    const unlatched = site({ latching: false });
    const { beams } = await tradeOff(logOfText(log()), unlatched, {
      ...options,
      thresholds: [35],
      delays: [10],
      beam: 'B2',
    });
    const response = await respond(
      logOfText(log()),
      parseSite({
        format: 'beamkeep-site/1',
        name: 'same',
        beams: [{ id: 'B2', layout: 'reflective', separation: 62, signalColumn: 'b1', latching: false }],
      }),
    );
    const fires = response.beams[0]?.changes.filter(({ state }) => state === 'fire').length;
    expect(beams[0]?.nuisance?.cells[0]?.[0]?.count).toBe(fires);
  });

  it('without a log it weighs the fires only, on the usual axes', async () => {
    const { beams, input } = await tradeOff(null, site(), options);
    expect(input).toBeNull();
    expect(beams[0]?.nuisance).toBeNull();
    expect(beams[0]?.thresholds).toBe(usualThresholds);
    expect(beams[0]?.delays).toBe(usualDelays);
    expect(usualThresholds).toHaveLength(20);
    expect(usualDelays).toHaveLength(20);
    expect(beams[0]?.current).toEqual({ threshold: 35, delay: 10 });
  });

  it('says what must change', async () => {
    await expect(tradeOff(null, site(), { ...options, beam: 'B9' })).rejects.toThrow(
      'beam "B9" is not in the site: it has B1, B2',
    );
    await expect(tradeOff(logOfText(log()), site(), { ...options, thresholds: [] })).rejects.toThrow('must rise');
  });
});

describe('triedSettings', () => {
  it('puts the current setting of every beam into the axes, and leaves them as they are where it stands there', () => {
    const axes = triedSettings(site({ alarmThreshold: 32, alarmDelay: 12 }), { thresholds: [25, 50], delays: [0, 10] });
    expect(axes).toEqual({ thresholds: [25, 32, 35, 50], delays: [0, 10, 12] });
    expect(triedSettings(site())).toEqual({ thresholds: usualThresholds, delays: usualDelays });
  });
  it('mends no axis that falls: it is refused where it is used', async () => {
    const axes = triedSettings(site(), { thresholds: [60, 20], delays: [0] });
    await expect(tradeOff(logOfText(log()), site(), { ...options, ...axes })).rejects.toThrow(/rise/);
  });
});
