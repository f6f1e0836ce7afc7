import { describe, expect, it } from 'vitest';
import type { Change } from '../../response/index.js';
import { parseSite } from '../../site/index.js';
import type { Excursion } from './excursions.js';
import type { ExpectedStep } from './expected.js';
import { amountReasons, signalReasons } from './signalReasons.js';
import type { ProofStep } from './step.js';

const [beam] = parseSite({
  beams: [{ id: 'B1', layout: 'reflective', separation: 62, alarmDelay: 8, faultDelay: 4, wavelength: 850 }],
}).beams;
if (!beam) throw new Error('no beam');

const stay: Excursion = {
  from: 20,
  to: 60,
  start: 20_000,
  end: 60_000,
  largest: 99,
  held: 99,
  last: 99,
  alarmAt: 22_000,
  faultAt: 25_000,
  alarmHeldSeconds: 30,
  faultHeldSeconds: 28,
  riseSeconds: 5,
};
const found = { clean: 0, intervalSeconds: 1, list: [] };
const expectedOf = (step: ProofStep, more: Partial<ExpectedStep>): ExpectedStep => ({
  step,
  words: '',
  obscuration: undefined,
  signal: undefined,
  window: undefined,
  state: 'normal',
  holdSeconds: 0,
  doubts: [],
  cautions: [],
  ...more,
});

describe('amountReasons', () => {
  const half = { value: 75, low: 62.5, high: 87.5 };
  const taking = (held: number, step: ProofStep = { do: 'filter', transmittance: 0.5 }, obscuration = half) =>
    amountReasons(expectedOf(step, { obscuration }), { ...stay, held }, found, beam);

  it('asks nothing of a step that may take any amount', () =>
    expect(amountReasons(expectedOf({ do: 'cover-slowly' }, {}), stay, found, beam)).toEqual([]));
  it.each([62.5, 75, 87.5])('%f % lies within 62.5 to 87.5', (held) => expect(taking(held)).toEqual([]));
  it('a filter of a half that takes a half was met by the light once', () => {
    const once =
      'It took 50 % of the light instead of 75 % (62.5 to 87.5 %): ' +
      'that is what it takes when the light meets it once, so it covers one of the two lenses only.';
    expect(taking(50)).toEqual([once]);
    expect(taking(37.5)[0]).toContain('covers one of the two lenses only'); // as far from a half as the filter may be off
  });
  it('less than that is a filter that was not in all of the light, more is a hand or a denser one', () => {
    expect(taking(37)).toEqual([
      'It took 37 % of the light instead of 75 % (62.5 to 87.5 %): ' +
        'it did not meet all of the light, or it is thinner at 850 nm than it says.',
    ]);
    expect(taking(88)).toEqual([
      'It took 88 % of the light instead of 75 % (62.5 to 87.5 %): ' +
        'more than it was in the path, or it is denser at 850 nm than it says.',
    ]);
  });
  it('a cover is met once anyway: no lens is blamed', () =>
    expect(taking(50, { do: 'part-cover', obscuration: 75 })[0]).toContain('it did not meet all of the light'));
  it('no limit is told below nothing', () =>
    expect(taking(8, { do: 'part-cover', obscuration: 2 }, { value: 2, low: -3, high: 7 })[0]).toContain('(0 to 7 %)'));
});

describe('signalReasons', () => {
  const slowly = expectedOf({ do: 'cover-slowly' }, { signal: 'fire', state: 'fire' });
  const atOnce = expectedOf({ do: 'cover-at-once' }, { signal: 'fault', state: 'fault' });
  const quiet = expectedOf({ do: 'filter', transmittance: 0.95 }, {});
  const came = (...states: readonly ('fire' | 'fault')[]): Change[] =>
    states.map((state, at) => ({ time: 30_000 + 1000 * at, since: 22_000, state }));
  const reasons = (step: ExpectedStep, signals: Change[], change: Partial<Excursion> = {}, intervalSeconds = 1) =>
    signalReasons(step, { ...stay, ...change }, signals, { ...found, intervalSeconds }, beam);

  it('the signal that had to come is no reason to fail', () => {
    expect(reasons(slowly, came('fire'))).toEqual([]);
    expect(reasons(atOnce, came('fault'))).toEqual([]);
    expect(reasons(quiet, [])).toEqual([]);
  });
  it('a fire beside the fault that had to come fails; a fault beside the fire does not', () => {
    expect(reasons(atOnce, came('fault', 'fire'))).toEqual([
      'A fire signal came, and none was to come: the largest obscuration was 99 %.',
    ]);
    expect(reasons(slowly, came('fire', 'fault'))).toEqual([]);
  });
  it('a signal that nothing was to bring fails, unless a fire stands already', () => {
    expect(reasons(quiet, came('fault'), { largest: 12 })).toEqual([
      'A fault signal came, and none was to come: the largest obscuration was 12 %.',
    ]);
    expect(reasons(quiet, came('fault', 'fire'))[0]).toContain('A fire signal came'); // the worse of the two is told
    expect(reasons({ ...quiet, state: 'fire' }, came('fire'))).toEqual([]);
  });
  it('a fire that did not come: too little light taken', () =>
    expect(reasons(slowly, [], { largest: 34.9 })).toEqual([
      'It reached 34.9 % at most, and the fire threshold is 35 %.',
      'No fire signal was due.',
    ]));
  it('a fire that did not come: held for less than the delay', () => {
    expect(reasons(slowly, [], { largest: 35, alarmHeldSeconds: 7.5, faultHeldSeconds: 20 })).toEqual([
      'It stayed beyond 35 % for 7.5 s, and the delay is 8 s: hold it longer.',
      'No fire signal was due.',
    ]);
    expect(reasons(slowly, [], { alarmHeldSeconds: 8, riseSeconds: 1 })[0]).not.toContain('hold it longer');
  });
  it('a fire that did not come though all was done for it: the time of covering is not blamed', () =>
    expect(reasons(slowly, [])).toEqual(['No fire signal was due.']));
  it('a fault that did not come is told by its own threshold and delay', () => {
    expect(reasons(atOnce, [], { largest: 89 })[0]).toBe('It reached 89 % at most, and the fault threshold is 90 %.');
    expect(reasons(atOnce, [], { faultHeldSeconds: 3, alarmHeldSeconds: 30 })[0]).toBe(
      'It stayed beyond 90 % for 3 s, and the delay is 4 s: hold it longer.',
    );
  });
  it('a cover that went on in more than two seconds was smoke to the equipment', () => {
    expect(reasons(atOnce, came('fire'), { riseSeconds: 2.5 })).toEqual([
      'It took 2.5 s to cover the beam: more than 2 s is not a blocked beam but smoke.',
      'The signal due was fire, and it had to be fault.',
    ]);
    expect(reasons(atOnce, [], { riseSeconds: 2 })).toEqual(['No fault signal was due.']);
    expect(reasons(atOnce, [], { riseSeconds: Number.NaN })).toHaveLength(2);
  });
  it('samples further apart than that can show no blocked beam, whatever the hand did', () => {
    expect(reasons(atOnce, [], { riseSeconds: 10 }, 10)[0]).toBe(
      'Samples stand 10 s apart, so nothing can show that it was covered within 2 s.',
    );
    expect(reasons(atOnce, [], { riseSeconds: 4 }, 2)[0]).toContain('It took 4 s to cover the beam');
  });
  it('a cover snatched on is a blocked beam: draw it slower; a filter is not drawn', () => {
    expect(reasons(slowly, came('fault'), { riseSeconds: 1.5 })).toEqual([
      'It took only 1.5 s: within 2 s it is a blocked beam, not smoke. Draw it slower.',
      'The signal due was fault, and it had to be fire.',
    ]);
    const dense = expectedOf({ do: 'filter', transmittance: 0.3 }, { signal: 'fire', state: 'fire' });
    expect(reasons(dense, came('fault'), { riseSeconds: 1.5 })).toEqual([
      'The signal due was fault, and it had to be fire.',
    ]);
  });
});
