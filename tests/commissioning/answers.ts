import type { AimJson, CommissioningRecord, CoveredJson, ProofJson } from 'beamkeep/commissioning';
import { recordOf } from '../../packages/beamkeep/src/commissioning/index.js';
import { parseSite, type Site } from '../../packages/beamkeep/src/site/index.js';

/* Answers of a day on which all went well, small enough to be read: tests change what they ask about. */

const at = (seconds: number): string => new Date(Date.parse('2027-01-20T10:00:00Z') + 1000 * seconds).toISOString();
const exact = (value: number) => ({ value, low: value, high: value });
const input = { lines: 10, dropped: 0, notes: [] };

/** Half-angle 0.7 degrees about 0.1, left at 0.2: 0.06 dB. */
export const aim: AimJson = {
  format: 'beamkeep-aim/1',
  beam: 'B1',
  axes: ['pan'],
  fit: {
    shape: 'gaussian',
    readings: 5,
    converged: true,
    peak: exact(100),
    floor: exact(0),
    power: exact(2),
    centre: [exact(0.1)],
    halfAngle: [{ value: 0.7, low: 0.69, high: 0.71 }],
    residualSpread: 0.3,
    informationGain: null,
    confidence: 0.95,
    covariance: [],
    stray: null,
  },
  left: { at: [0.2], offset: [{ value: 0.1, low: 0.08, high: 0.12 }], loss: { value: 0.06, low: 0.05, high: 0.07 } },
  residue: { share: 0.04, from: 'site file' },
  margins: {
    alarm: {
      threshold: 35,
      degrees: { value: 0.45, low: 0.43, high: 0.47 },
      millimetres: exact(487),
      degreesOnPeak: 0.55,
    },
    fault: {
      threshold: 90,
      degrees: { value: 1.2, low: 1.1, high: 1.3 },
      millimetres: exact(1299),
      degreesOnPeak: 1.3,
    },
  },
  movement: [],
  flags: [],
  verdict: 'good',
  sentences: ['The head was left 0.1 degrees off the peak.'],
  actions: [],
  scan: { angles: [[-0.9, -0.4, 0.1, 0.6, 1.1]], power: [24, 70, 100, 70, 24] },
  notes: [],
};

const reach = {
  reachable: 'yes',
  trueObscuration: 36.5,
  decibels: 1.87,
  trueDecibels: 1.97,
  timesTheSmoke: 1.05,
} as const;

/** 4 % stays when the reflector is covered. */
export const covered: CoveredJson = {
  format: 'beamkeep-covered/1',
  beam: 'B1',
  before: { from: at(0), to: at(54), samples: 55, reading: 98, share: 1, spread: 0.002 },
  covered: { from: at(64), to: at(96), samples: 33, reading: 3.92, share: 0.04, spread: 0.002 },
  after: { from: at(106), to: at(160), samples: 55, reading: 98, share: 1, spread: 0.002 },
  ratio: { value: 0.04, low: 0.039, high: 0.041 },
  largestObscuration: { value: 96, low: 95.9 },
  alarm: { threshold: 35, ...reach, verdict: 'fit' },
  fault: { threshold: 90, ...reach, trueObscuration: 93.8, verdict: 'fit' },
  drift: { percent: 0.1, low: -0.2, high: 0.4, tells: false },
  ratioOfSiteFile: null,
  coveredSubtracted: false,
  verdict: 'fit',
  sentences: ['Covered, the beam still reads 4 % of its clean reading.'],
  actions: [],
  trace: { start: at(0), seconds: [0, 60, 62, 100, 102, 160], values: [1, 1, 0.04, 0.04, 1, 1] },
  assumed: [],
  input,
};

const expected = {
  obscuration: null,
  signal: null,
  window: null,
  state: 'normal',
  holdSeconds: 0,
  doubts: [],
  cautions: [],
} as const;
const step = {
  verdict: 'pass',
  shownBy: 'signal',
  end: null,
  obscuration: null,
  riseSeconds: null,
  thresholdAt: null,
  signalAt: null,
  state: 'normal',
} as const;

/** A filter that must not alarm, and is taken away; a cover that must; the alarm to the panel. */
export const proof: ProofJson = {
  format: 'beamkeep-proof/1',
  beam: 'B1',
  verdict: 'pass',
  clean: 0.4,
  steps: [
    {
      ...step,
      expected: {
        ...expected,
        do: 'filter',
        words: 'Hold a filter.',
        obscuration: { value: 19, low: 16, high: 22 },
        holdSeconds: 30,
      },
      reasons: ['No signal came, as it must not.'],
      start: at(20),
      obscuration: 18.6,
    },
    {
      ...step,
      expected: { ...expected, do: 'uncover', words: 'Take it away.' },
      reasons: ['The reading came back.'],
      start: at(60),
      obscuration: 0.5,
    },
    {
      ...step,
      expected: {
        ...expected,
        do: 'cover-slowly',
        words: 'Draw a cover.',
        signal: 'fire',
        window: { from: 10, to: 15 },
        state: 'fire',
      },
      reasons: ['Fire due 10 s after the threshold was reached.'],
      start: at(80),
      obscuration: 99.5,
      state: 'fire',
    },
    {
      ...step,
      expected: { ...expected, do: 'panel-alarm', words: 'See it arrive.', signal: 'fire', state: 'fire' },
      reasons: ["The panel's list has it."],
      start: null,
      state: null,
    },
  ],
  unexplained: [],
  panelList: true,
  trace: { start: at(0), seconds: [0, 20, 22, 60, 62, 80, 88, 120], values: [0.4, 0.4, 19, 19, 0.4, 0.4, 99.5, 99.5] },
  assumed: [],
  input,
};

/** A site of beams whose settings that bear on a decision are all given; more may be changed. */
export const siteOf = (...beams: readonly object[]): Site =>
  parseSite({
    name: 'Depot',
    timeZone: 'Europe/Lisbon',
    beams: beams.map((more, at) => ({
      id: `B${at + 1}`,
      layout: 'reflective',
      separation: 62,
      height: 9,
      halfAngle: 0.7,
      cleanAir: 98,
      covered: 3.92,
      signalUnit: 'percent',
      compensation: 'none',
      alarmThreshold: 35,
      alarmDelay: 10,
      faultThreshold: 90,
      faultDelay: 10,
      latching: true,
      ...more,
    })),
  });

/** A record of them, made of what was measured. */
export const gathered = (
  site: Site = siteOf({}),
  answers: Record<string, { aim?: AimJson; covered?: CoveredJson; proof?: ProofJson }> = {
    B1: { aim, covered, proof },
  },
  day: object = {},
  more: { findings?: CommissioningRecord['findings']; log?: CommissioningRecord['log'] } = {},
): CommissioningRecord =>
  recordOf({ format: 'beamkeep-day/1', site: 'site.json', date: '2027-01-20', beams: [], ...day }, site, {
    answers: new Map(Object.entries(answers)),
    troubles: [],
    log: null,
    made: Date.parse('2027-01-20T15:00:00Z'),
    ...more,
  });
