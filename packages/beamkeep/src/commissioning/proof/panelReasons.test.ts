import { describe, expect, it } from 'vitest';
import type { Change } from '../../response/index.js';
import type { ExpectedStep } from './expected.js';
import { panelOnly, panelShowing, panelShows, unwanted } from './panelReasons.js';

/* The panel may be five seconds late, by scanning its lines: a step from 100 to 200 s, a fire due 10 to 15 s on. */

const at = (seconds: number, what: string) => ({ time: 1000 * seconds, what });
const fire: ExpectedStep = {
  step: { do: 'cover-slowly' },
  words: '',
  obscuration: undefined,
  signal: 'fire',
  window: { from: 10, to: 15 },
  state: 'fire',
  holdSeconds: 20,
  doubts: [],
  cautions: [],
};
const due: Change[] = [{ time: 112_000, since: 102_000, state: 'fire' }];
const shows = (changes: readonly Change[], ...panel: ReturnType<typeof at>[]) =>
  panelShows(fire, 100_000, 200_000, changes, panel);

describe('panelShowing', () => {
  const showing = (seconds: number, what = 'fire') => panelShowing(fire, 100_000, 200_000, [at(seconds, what)])?.time;
  it.each([95, 150, 205])('a line at %d s belongs to the step', (seconds) =>
    expect(showing(seconds)).toBe(1000 * seconds),
  );
  it.each([94.9, 205.1])('a line at %f s does not', (seconds) => expect(showing(seconds)).toBeUndefined());
  it('another word is another line', () => expect(showing(150, 'fault')).toBeUndefined());
});

describe('panelShows', () => {
  it.each([107, 112, 117])('a fire at %d s came in time', (seconds) =>
    expect(shows(due, at(seconds, 'fire'))).toEqual([]),
  );
  it('later, or earlier, than delay and allowance is told with both figures', () => {
    expect(shows(due, at(117.5, 'fire'))).toEqual([
      "The panel's list has fire 15.5 s after the threshold was reached, and 10 to 15 s were expected: " +
        'its delay, or its clock, is not what was told.',
    ]);
    expect(shows(due, at(106, 'fire'))[0]).toContain('has fire 4 s after');
  });
  it('a fire that was due and is not in the list fails', () =>
    expect(shows(due, at(120, 'fault'))).toEqual(["The panel's list has no fire for this step."]));
  it('what was not due is judged by the signal, not told twice', () => {
    expect(shows([])).toEqual([]);
    expect(shows([], at(120, 'fire'))).toEqual([]);
  });
  it('a signal that began before the step or came after it is not due in it', () => {
    expect(shows([{ time: 112_000, since: 99_000, state: 'fire' }])).toEqual([]);
    expect(shows([{ time: 201_000, since: 102_000, state: 'fire' }])).toEqual([]);
    expect(shows([{ time: 112_000, since: 102_000, state: 'fault' }])).toEqual([]);
    expect(shows([{ time: 200_000, since: 100_000, state: 'fire' }])).toHaveLength(1);
  });
});

describe('unwanted', () => {
  const told = (...panel: ReturnType<typeof at>[]) => unwanted(100_000, 200_000, panel);
  it.each(['fire', 'fault'])('a %s in a step that was to bring none', (what) => {
    const says = `The panel's list has a ${what} in this step, and none was to come.`;
    expect(told(at(100, what))).toEqual([says]);
    expect(told(at(200, what))).toEqual([says]);
  });
  it('what lies before or after, or is no signal, is none of it', () =>
    expect(told(at(99, 'fire'), at(201, 'fault'), at(150, 'reset'))).toEqual([]));
});

describe('panelOnly', () => {
  const only = (...panel: ReturnType<typeof at>[]) => panelOnly('fire', 100_000, 200_000, panel);
  it.each([100, 200])('a line at %d s shows it', (seconds) =>
    expect(only(at(seconds, 'fire'))).toMatchObject({ verdict: 'pass', shownBy: 'panel', signalAt: 1000 * seconds }),
  );
  it('a list without it fails the step', () =>
    expect(only(at(99, 'fire'), at(201, 'fire'), at(150, 'fault'))).toEqual({
      verdict: 'fail',
      shownBy: 'panel',
      signalAt: Number.NaN,
      reasons: ["The panel's list has no fire here."],
    }));
  it('no list leaves it to a person, and says what to write down', () =>
    expect(panelOnly('fire', 100_000, 200_000, undefined)).toMatchObject({
      verdict: 'not shown',
      shownBy: 'nobody',
      reasons: [expect.stringContaining('write down what the panel showed')],
    }));
});
