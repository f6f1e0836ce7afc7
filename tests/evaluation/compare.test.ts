import { describe, expect, it } from 'vitest';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { compare } from './compare.js';
import { compared, hours, labelled, said, watched } from './examples.js';

describe('presence', () => {
  it('is a hit where the cause is stated on the beam, whenever it is stated', () => {
    const beam = compared({ causes: [labelled('contamination', 0, 900)] }, [said('contamination', 950, 990)]);
    expect(beam.presence.get('contamination')).toBe('hit');
  });
  it('is a miss below a confidence of one half', () => {
    const weak = said('contamination', 0, 900, { confidence: 0.49 });
    const beam = compared({ causes: [labelled('contamination', 0, 900)] }, [weak]);
    expect(beam.presence.get('contamination')).toBe('miss');
  });
  it('takes smoke-like at any confidence', () => {
    const beam = compared({ causes: [labelled('smoke-like', 5, 6)] }, [said('smoke-like', 5, 6, { confidence: 0.01 })]);
    expect(beam.presence.get('smoke-like')).toBe('hit');
  });
  it('is false where a cause is stated that is not there', () =>
    expect(compared({}, [said('vibration', 0, 900)]).presence.get('vibration')).toBe('false'));
  it('takes a word that the truth accepts, and does not hold it against that word', () => {
    const drift = labelled('misalignment-drift', 0, 900, { accepts: ['contamination'] });
    const beam = compared({ causes: [drift] }, [said('contamination', 0, 900)]);
    expect(beam.presence.get('misalignment-drift')).toBe('hit');
    expect(beam.presence.get('contamination')).toBe('not asked');
    expect(beam.events[0]?.verdict).toBe('found');
  });
  it('does not ask for what is near to the rule', () => {
    const beam = { traces: [{ cause: 'vibration' as const, near: true }] };
    expect(compared(beam, [said('vibration', 0, 900)]).presence.get('vibration')).toBe('not asked');
    expect(compared(beam, []).presence.get('vibration')).toBe('not asked');
  });
  it('lets only a note pass on a trace that is not near', () => {
    const beam = { traces: [{ cause: 'vibration' as const, near: false }] };
    expect(compared(beam, [said('vibration', 0, 900)]).presence.get('vibration')).toBe('false');
    const note = said('vibration', 0, 900, { severity: 'note' });
    expect(compared(beam, [note]).presence.get('vibration')).toBe('not asked');
  });
});

describe('localisation', () => {
  it('takes a stretch that shares half of the union', () => {
    const beam = compared({ causes: [labelled('condensation', 0, 100)] }, [said('condensation', 40, 110)]);
    expect(beam.agreement.get('condensation')).toBeCloseTo((60 + 1 / 12) / (110 + 1 / 12), 9); // a sample lasts 5 min
    expect(beam.events[0]?.verdict).toBe('found');
  });
  it('refuses one that shares less', () => {
    const beam = compared({ causes: [labelled('condensation', 0, 100)] }, [said('condensation', 60, 110)]);
    expect(beam.events[0]?.verdict).toBe('misplaced');
  });
  it('takes a step within the hour, and tells of one too many', () => {
    const beam = compared({ causes: [labelled('cleaned', 100)] }, [said('cleaned', 101), said('cleaned', 400)]);
    expect(beam.events[0]?.verdict).toBe('found');
    expect(beam.strays.get('cleaned')).toBe(1);
  });
  it('refuses a step an hour and a half away', () => {
    const beam = compared({ causes: [labelled('misalignment-step', 100, 900)] }, [
      said('misalignment-step', 101.5, 900),
    ]);
    expect(beam.events[0]?.verdict).toBe('misplaced');
  });
  it('allows a hundredth of a log under a week', () => {
    const short = { to: Date.UTC(2027, 0, 3), causes: [labelled('cleaned', 20)] };
    expect(compared(short, [said('cleaned', 20.45)]).events[0]?.verdict).toBe('found'); // 0.48 h of two days
    expect(compared(short, [said('cleaned', 20.55)]).events[0]?.verdict).toBe('misplaced');
  });
});

describe('smoke', () => {
  const episodes = [labelled('smoke-like', 5, 6), labelled('smoke-like', 8, 9)];
  it('wants one finding an episode', () => {
    const beam = compared({ causes: episodes }, [said('smoke-like', 5, 9)]);
    expect(beam.events.filter(({ verdict }) => verdict === 'missed')).toHaveLength(1);
  });
  it('refuses a finding much longer than the episode', () => {
    const beam = compared({ causes: [labelled('smoke-like', 5, 6)] }, [said('smoke-like', 0, 20)]);
    expect(beam.events[0]?.verdict).toBe('missed');
  });
  it('excuses dust that grew as smoke may', () => {
    const dust = { couldBeSmoke: [{ start: Date.UTC(2027, 0, 1, 5), end: Date.UTC(2027, 0, 1, 7) }] };
    const beam = compared(dust, [said('smoke-like', 6, 8), said('smoke-like', 30, 31)]);
    expect(beam.findings.map(({ verdict, excused }) => [verdict, excused])).toEqual([
      ['neither', true],
      ['wrong', false],
    ]);
  });
  it('knows a loss that must be called fire for its depth alone', () => {
    const fires = [{ from: hours(5), to: hours(7) }];
    const said56 = [said('smoke-like', 5, 6), said('smoke-like', 30, 31)];
    expect(compared({}, said56, null, fires).findings.map(({ demanded, verdict }) => [demanded, verdict])).toEqual([
      [true, 'neither'],
      [false, 'wrong'],
    ]);
  });
});

describe('findings', () => {
  it('are wrong at a time when their cause is not at work', () => {
    const beam = compared({ causes: [labelled('obstruction', 5, 6)] }, [
      said('obstruction', 5, 6),
      said('obstruction', 50, 51),
    ]);
    expect(beam.findings.map(({ verdict }) => verdict)).toEqual(['right', 'wrong']);
  });
});

describe('nothing labelled drops out', () => {
  it('judges each labelled event once, whatever is said', () => {
    const causes = causeWords.flatMap((cause, row) => [
      labelled(cause, row, row + 1),
      labelled(cause, row + 100, row + 101),
    ]);
    for (const findings of [[], causeWords.map((cause) => said(cause, 0, 5))]) {
      const { events } = compared({ causes }, findings);
      expect(events).toHaveLength(2 * causeWords.length);
    }
  });
  it('counts a beam that the diagnosis leaves out as missed', () => {
    const beams = [watched({ causes: [labelled('contamination', 0, 900)] })];
    const truth = { format: 'beamkeep-truth/1' as const, kind: 'single', samplingSeconds: 300, beams };
    const [beam] = compare('north-hall', truth, { beams: [] }, new Map(), causeWords);
    expect(beam?.events.map(({ verdict }) => verdict)).toEqual(['missed']);
  });
});
