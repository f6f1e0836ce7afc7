import { describe, expect, it } from 'vitest';
import { aim, covered, gathered, proof, siteOf } from '../../../../../tests/commissioning/answers.js';
import type { AimJson } from '../answers/aimAnswer.js';
import type { CoveredJson } from '../answers/coveredAnswer.js';
import type { ProofJson } from '../answers/proofAnswer.js';

interface Change {
  readonly aim?: Partial<AimJson>;
  readonly covered?: Partial<CoveredJson>;
  readonly proof?: Partial<ProofJson>;
}
const record = (change: Change, settings: object = {}) =>
  gathered(siteOf({ wavelength: 880, ...settings }), {
    B1: {
      aim: { ...aim, ...change.aim },
      covered: { ...covered, ...change.covered },
      proof: { ...proof, ...change.proof },
    },
  });
const attention = (change: Change, settings: object = {}) =>
  record(change, settings).attention.map(({ words }) => words);
const missing = (change: Change) => record(change).missing.flatMap(({ beam, words }) => (beam === 'B1' ? [words] : []));
const [filter, uncover, slowly, alarm] = proof.steps;
if (!filter || !uncover || !slowly || !alarm) throw new Error('no steps');

describe('what a reader must look at', () => {
  it('nothing, where all went well', () => expect(attention({})).toEqual([]));
  it('an aim to look at again, by its first sentence', () => {
    expect(attention({ aim: { verdict: 'look again' } })).toEqual(['aim: The head was left 0.1 degrees off the peak.']);
    expect(attention({ aim: { verdict: 'look again', sentences: [] } })).toEqual(['aim: look again']);
    expect(attention({ aim: { verdict: 'not known' } })).toEqual([]);
  });
  it('a covered test that is not fit, by its first sentence', () => {
    expect(attention({ covered: { verdict: 'caution' } })).toEqual([
      'covered test: Covered, the beam still reads 4 % of its clean reading.',
    ]);
    expect(attention({ covered: { verdict: 'refuse', sentences: [] } })).toEqual(['covered test: refuse']);
  });
  it('a clean reading that changed', () =>
    expect(attention({ covered: { drift: { percent: -4.2, low: -5, high: -3.4, tells: true } } })).toEqual([
      'covered test: the clean reading changed by -4.2 %.',
    ]));
  it('a site file that says another residue than was measured, on either side', () => {
    const says = (ratioOfSiteFile: number) => attention({ covered: { ratioOfSiteFile } });
    expect(says(0.05)).toEqual([
      'covered test: measured 0.04 of the clean reading, and the site file says 0.05: write the measured reading into it.',
    ]);
    expect(says(0.038)).toHaveLength(1);
    for (const within of [0.039, 0.04, 0.041]) expect(says(within)).toEqual([]);
  });
  it('each step that failed, by its number and its reasons, and losses that belong to none', () =>
    expect(
      attention({
        proof: {
          steps: [filter, { ...uncover, verdict: 'fail', reasons: ['One.', 'Two.'] }],
          unexplained: [{ start: null, end: null, largest: 31.25 }],
        },
      }),
    ).toEqual(['proof, step 2 (uncover): One. Two.', 'proof: a loss of 31.3 % belongs to no step.']));
  it('each limit that is not kept, with its source and whether it was read', () =>
    expect(attention({}, { alarmThreshold: 8 })).toContainEqual(
      expect.stringMatching(/^settings: alarm threshold at least 1 dB is not kept \(GB 14003-2005.*, from memory\)\.$/),
    ));
  it('settings that are assumed, where they bear on an alarm', () => {
    expect(attention({}, { alarmDelay: undefined })).toEqual(['settings assumed, not given: alarmDelay 10 s.']);
    expect(attention({}, { wavelength: undefined })).toEqual([]);
  });
  it('names the beam of each', () =>
    expect(record({ aim: { verdict: 'look again' } }).attention.map(({ beam }) => beam)).toEqual(['B1']));
});

describe('what is missing', () => {
  it('of a beam of which all is told, nothing', () => expect(missing({})).toEqual([]));
  it('of a beam of which nothing was measured, every test', () => {
    const words = (settings: object) =>
      gathered(siteOf(settings), {}).missing.flatMap((point) => (point.beam ? [point.words] : []));
    expect(words({})).toEqual(['aim scan: not there', 'covered test: not there', 'proof: not there']);
    expect(words({ halfAngle: undefined })).toContain('half-angle of the lobe: not known');
  });
  it('a scan tells the half-angle that the site file does not', () =>
    expect(gathered(siteOf({ halfAngle: undefined })).missing.map(({ words }) => words)).not.toContain(
      'half-angle of the lobe: not known',
    ));
  it('where the head was left', () =>
    expect(missing({ aim: { left: null } })).toEqual(['aim: where the head was left is not told']));
  it('steps that the log cannot show, by number', () =>
    expect(
      missing({
        proof: { steps: [filter, uncover, { ...slowly, verdict: 'not shown' }, { ...alarm, verdict: 'not shown' }] },
      }),
    ).toEqual(['proof: not shown by the log: step 3 (cover-slowly), step 4 (panel-alarm)']));
  it("the panel's own list", () =>
    expect(missing({ proof: { panelList: false } })).toEqual([
      "proof: the panel's own list was not given, so only the signal is judged",
    ]));
  it('of the site: a day, people and a licence among them, a log, a look at what asks for someone to go', () => {
    const site = (day: object, more: Parameters<typeof gathered>[3] = {}) =>
      gathered(undefined, undefined, day, more).missing.flatMap(({ beam, words }) => (beam === null ? [words] : []));
    const told = {
      impairment: {
        from: '09:30',
        until: '13:10',
        told: [{ who: 'a', time: 'b' }],
        fireWatch: { by: 'c', from: '09:30', until: '13:00' },
        returned: { time: '13:10', by: 'd', told: [{ who: 'a', time: 'b' }] },
      },
    };
    const log = { from: null, to: null, lines: 1, dropped: 0 };
    const people = [
      { role: 'a', name: 'b' },
      { role: 'c', name: 'd', licence: 'L-1' },
    ];
    expect(site({ ...told, people }, { log })).toEqual([]);
    expect(site({ ...told, people: people.slice(0, 1) }, { log })).toEqual(['a licence of those who did the work']);
    expect(site({ ...told }, { log })).toEqual(['who did the work']);
    expect(site({ ...told, people, date: '' }, { log })).toEqual(['the day of the work']);
    expect(site({ ...told, people })).toEqual(['a log of the received signal after the work']);
    const finding = {
      beam: 'B1',
      cause: 'dust',
      confidence: 1,
      start: '',
      end: '',
      summary: '',
      onSite: null,
    } as const;
    const judged = { verdict: 'confirmed', cause: null, note: '' } as const;
    const findings = [
      { ...finding, severity: 'act' },
      { ...finding, severity: 'watch' },
      { ...finding, severity: 'act', onSite: judged },
    ] as const;
    expect(site({ ...told, people }, { log, findings })).toEqual([
      'a look on site at findings that ask for someone to go: 1',
    ]);
  });
});
