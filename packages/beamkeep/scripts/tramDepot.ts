import { type BeamPlan, type Effect, gaussianLobe, plainRecording, type Scenario } from '../src/simulation/index.js';

/*
 * The story of the demonstration log: an invented tram depot near an invented town on the Portuguese coast, four
 * reflective beams side by side under the roof of its maintenance hall, 1 February to 31 May 2027.
 *
 *   B1  over the brake pit, on the flank of its aim: brake dust, and the roof's heat moves it
 *   B2  over the lifting jacks: moves too; its head was knocked when the ceiling was worked on, and nobody aimed it again
 *   B3  over the welding bay: haze on Tuesday mornings, once more than haze; a gantry left in its path
 *   B4  beside the wash bay: mist at dawn in the cold months, sun through the gable window in spring
 *
 * All: the logger stood still for most of a day in March. The people ask "it faults on sunny mornings" (B4) and "why
 * did it alarm at 06:40 on Tuesdays" (B3).
 */

const at = (iso: string) => Date.parse(iso);
const start = at('2027-02-01T00:00:00Z');
const days = 120;

const common = {
  layout: 'reflective',
  separation: 62,
  height: 9.4,
  bearing: 97,
  tilt: 1,
  halfAngle: 0.7,
  lobe: gaussianLobe,
  unit: 'percent',
  cleanAir: 100,
  covered: 0.004,
  ceiling: 1.6,
  step: 0.1,
  alarmThreshold: 35,
  faultThreshold: 90,
  alarmDelay: 10,
  faultDelay: 10,
  untold: ['latching', 'compensation'],
} as const;

const electronics = {
  noise: 0.0018,
  wander: 0.0004,
  wanderSeconds: 1800,
  tails: 0.01,
  heatNoise: 0.004,
  shimmer: 1.25,
  ageing: 0.2,
  temperatureCoefficient: 0.008,
  warmUp: 0,
  warmUpHours: 1,
};

const outage: Effect = {
  effect: 'gap',
  how: 'lines',
  stretches: [{ from: at('2027-03-20T22:14:00Z'), to: at('2027-03-21T17:38:00Z') }],
};

const roof = {
  effect: 'movement',
  stream: 'roof',
  reach: 2,
  lag: 1.4,
  across: 0.12,
  acrossLag: 3,
  wind: 0.01,
  aimedAt: 0.25,
} as const;

const dust = { effect: 'dirt', workDaysOnly: true, bursts: 0.15, uneven: 0.4 } as const;
const cleaned = at('2027-04-14T09:40:00Z');

const beams: readonly BeamPlan[] = [
  {
    ...common,
    id: 'B1',
    column: 'b1',
    offset: [0.5, 0.12],
    electronics,
    effects: [
      { ...roof, swing: 0.2, direction: 0.2 },
      { ...dust, stream: 'dust/B1', before: 0.5, rate: 0.21, cleanings: [{ time: cleaned, leaves: 0.06, by: 'hand' }] },
      outage,
    ],
  },
  {
    ...common,
    id: 'B2',
    column: 'b2',
    offset: [0.16, 0.05],
    electronics: { ...electronics, noise: 0.0022 },
    effects: [
      { ...roof, swing: 0.17, direction: -0.3 },
      {
        ...dust,
        stream: 'dust/B2',
        before: 0.5,
        rate: 0.09,
        cleanings: [{ time: cleaned + 32 * 60_000, leaves: 0.1, by: 'hand' }],
      },
      { effect: 'knock', time: at('2027-03-11T14:21:30Z'), turn: [0.33, -0.1], settles: 0.05, leaves: 0 },
      outage,
    ],
  },
  {
    ...common,
    id: 'B3',
    column: 'b3',
    offset: [0.08, 0.02],
    electronics: { ...electronics, noise: 0.0016 },
    effects: [
      { ...roof, swing: 0.03, direction: 0.5 },
      { ...dust, stream: 'dust/B3', before: 0.3, rate: 0.012, cleanings: [] },
      {
        effect: 'aerosol',
        stream: 'welding',
        depth: 0.65,
        uneven: 0.16,
        active: 1,
        weekdays: [2],
        puffs: 9,
        rises: 4,
        clears: 14,
        ragged: 0.22,
        hours: [0.065, 0.3],
      },
      {
        effect: 'smoke',
        stream: 'welding morning',
        fires: [
          {
            from: at('2027-03-16T06:30:00Z'),
            law: 'smouldering',
            growth: 660,
            doublings: 4,
            peak: 2.5,
            stays: 420,
            clears: 1500,
            dither: 0.1,
            ditherSeconds: 15,
          },
          {
            from: at('2027-05-04T05:20:00Z'),
            law: 'smouldering',
            growth: 1500,
            doublings: 4.5,
            peak: 3.1,
            stays: 1500,
            clears: 2700,
            dither: 0.12,
            ditherSeconds: 15,
          },
        ],
      },
      {
        effect: 'block',
        stream: 'gantry',
        restless: 0.004,
        standings: [{ from: at('2027-02-25T16:47:20Z'), to: at('2027-02-26T06:12:40Z'), covers: 0.29, edge: 2 }],
      },
      outage,
    ],
  },
  {
    ...common,
    id: 'B4',
    column: 'b4',
    offset: [0.05, -0.04],
    electronics: { ...electronics, noise: 0.0025 },
    effects: [
      { ...roof, swing: 0.03, direction: 0 },
      { ...dust, stream: 'dust/B4', before: 0.2, rate: 0.015, cleanings: [] },
      {
        effect: 'film',
        stream: 'wash bay',
        depth: 0.5,
        nights: 0.4,
        cooling: 3,
        dries: 1.6,
        own: 0.6,
        season: [start - 10 * 86_400_000, at('2027-03-26T00:00:00Z')],
        late: 0.3,
      },
      {
        effect: 'sunlight',
        stream: 'gable window',
        azimuth: [99, 6.5],
        elevation: [10, 24],
        adds: 0.2,
        rough: 0.18,
        edge: 1.5,
      },
      outage,
    ],
  },
];

/** The scenario of the demonstration log. */
export const tramDepot: Scenario = {
  name: 'Tram depot, maintenance hall',
  kind: 'mixed',
  timeZone: 'Europe/Lisbon',
  latitude: 41.1,
  longitude: -8.6,
  climate: { mean: 14.5, season: 5, daily: 9, fronts: 2.6, cloud: 0.42, mood: 2, dryness: 5.5 },
  calendar: { days: { week: [1, 2, 3, 4, 5] }, opens: 6, closes: 15.5, idle: 0.03 },
  start,
  samples: days * 1440,
  intervalSeconds: 60,
  solarGain: 0.026,
  thermometerLag: 1.2,
  temperature: { column: 't_roof', step: 0.1 },
  recording: plainRecording,
  visits: [
    { time: at('2027-04-14T09:00:00Z'), until: at('2027-04-14T10:30:00Z'), beam: 'B1', work: 'cleaned' },
    { time: at('2027-04-14T09:00:00Z'), until: at('2027-04-14T10:30:00Z'), beam: 'B2', work: 'cleaned' },
  ],
  beams,
  untold: [],
};

/** Its seed. */
export const tramDepotSeed = 2027;

/** How far the panel's clock runs ahead of the logger's [s]. */
export const panelAheadSeconds = 140;
