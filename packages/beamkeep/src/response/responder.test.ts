import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, type ResponderMemory, type ResponseCircumstances, responder } from './responder.js';

const usual = {
  alarmThreshold: 35,
  faultThreshold: 90,
  alarmDelay: 10,
  faultDelay: 10,
  latching: true,
  hysteresis: 0,
};
const everySecond: ResponseCircumstances = { sampling: 'regular', intervalSeconds: 1, resets: [] };
const onChange: ResponseCircumstances = { sampling: 'on-change', intervalSeconds: 1, resets: [] };

type Sample = readonly [seconds: number, obscuration: number];

/** Samples one interval apart from an instant on, of one obscuration. */
const hold = (obscuration: number, from: number, to: number, step = 1): Sample[] =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => [from + i * step, obscuration] as const);

function run(
  samples: readonly Sample[],
  settings: Partial<typeof usual> = {},
  circumstances: Partial<ResponseCircumstances> = {},
  until?: number,
) {
  const changes: Change[] = [];
  const beam = responder({ ...usual, ...settings }, { ...everySecond, ...circumstances }, (change) =>
    changes.push(change),
  );
  for (const [seconds, obscuration] of samples) beam.feed(seconds * 1000, obscuration);
  if (until !== undefined) beam.advance(until * 1000);
  return { changes, memory: beam.memory() };
}

/** The changes as "0 normal, 25 fire": seconds and states. */
const told = (...of: Parameters<typeof run>): string =>
  run(...of)
    .changes.map(({ time, state }) => `${time / 1000} ${state}`)
    .join(', ');

describe('the state at the first sample', () => {
  it('is normal', () => expect(told([[5, 2]])).toBe('5 normal'));
  it('is normal while a delay begins', () => expect(told([[5, 60]])).toBe('5 normal'));
  it('is fire where there is no delay', () => expect(told([[5, 60]], { alarmDelay: 0 })).toBe('5 fire'));
  it('is told by the first usable sample', () =>
    expect(
      told([
        [5, Number.NaN],
        [6, 1],
      ]),
    ).toBe('6 normal'));
  it('is not told of a log without one', () => expect(told([[5, Number.NaN]])).toBe(''));
});

describe('a condition that begins and holds', () => {
  it('is dated at the first sample not earlier than beginning and delay', () => {
    expect(told([...hold(2, 0, 4), ...hold(40, 5, 30)])).toBe('0 normal, 15 fire');
    expect(told([...hold(2, 0, 4), ...hold(40, 5, 30, 1.5)])).toBe('0 normal, 15.5 fire');
    expect(told([...hold(2, 0, 240, 60), ...hold(40, 300, 420, 60)], {}, { intervalSeconds: 60 })).toBe(
      '0 normal, 360 fire',
    );
  });
  it('begins at the threshold itself', () => expect(told(hold(35, 0, 20))).toBe('0 normal, 10 fire'));
  it('begins at the threshold up to the rounding of units', () => {
    const noisy = 100 - 100 * (0.648594377510040_2 * (1 - 0.004) + 0.004); // 65 % of 100 with 0.4 covered
    expect(told(hold(noisy, 0, 20))).toBe('0 normal, 10 fire');
  });
  it('does not begin below it', () => expect(told(hold(34.999, 0, 20))).toBe('0 normal'));
  it('starts afresh after one sample below', () =>
    expect(told([...hold(40, 0, 9), [10, 34], ...hold(40, 11, 40)])).toBe('0 normal, 21 fire'));
  it('must hold at the sample that would be dated', () => expect(told([...hold(40, 0, 9), [10, 34]])).toBe('0 normal'));
  it('takes a delay with decimals by the millisecond', () =>
    expect(told(hold(40, 0, 20, 0.1), { alarmDelay: 4.35 }, { intervalSeconds: 0.1 })).toBe('0 normal, 4.4 fire'));
  it('names when it began', () =>
    expect(run([...hold(2, 0, 4), ...hold(40, 5, 30)]).changes[1]).toEqual({
      time: 15000,
      state: 'fire',
      since: 5000,
    }));
});

describe('a log on change', () => {
  it('is dated exactly at beginning and delay', () =>
    expect(
      told(
        [
          [0, 2],
          [5, 40],
          [500, 41],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal, 15 fire'));
  it('holds the last value as long as the log goes on', () => {
    expect(
      told(
        [
          [0, 2],
          [5, 40],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal');
    expect(
      told(
        [
          [0, 2],
          [5, 40],
        ],
        {},
        onChange,
        14,
      ),
    ).toBe('0 normal');
    expect(
      told(
        [
          [0, 2],
          [5, 40],
        ],
        {},
        onChange,
        15,
      ),
    ).toBe('0 normal, 15 fire');
  });
  it('knows no gap', () =>
    expect(
      told(
        [
          [0, 2],
          [5, 40],
          [9999, 41],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal, 15 fire'));
  it('needs the whole delay', () =>
    expect(
      told(
        [
          [0, 40],
          [10, 2],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal'));
  it('takes a step from clear to total for a blocked beam, however long the clear value was held', () =>
    expect(
      told(
        [
          [0, 2],
          [500, 97],
          [900, 2],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal, 510 fault, 900 normal'));
  it('takes a step by way of a held partial loss for smoke', () =>
    expect(
      told(
        [
          [0, 2],
          [500, 50],
          [503, 97],
          [900, 2],
        ],
        {},
        onChange,
      ),
    ).toBe('0 normal, 510 fire'));
  it('resets exactly, and alarms again after the delay', () =>
    expect(
      told(
        [
          [0, 40],
          [500, 2],
        ],
        {},
        { ...onChange, resets: [100_000] },
      ),
    ).toBe('0 normal, 10 fire, 100 normal, 110 fire'));
  it('lets no reset from before the fire end it', () =>
    expect(
      told(
        [
          [0, 2],
          [5, 40],
          [500, 41],
        ],
        {},
        { ...onChange, resets: [7000, 9000] },
      ),
    ).toBe('0 normal, 15 fire'));
  it('ends an unlatched fire at the line in clear air', () =>
    expect(
      told(
        [
          [0, 40],
          [30, 2],
        ],
        { latching: false },
        onChange,
      ),
    ).toBe('0 normal, 10 fire, 30 normal'));
  it('advances nothing elsewhere', () => expect(told(hold(40, 0, 5), {}, everySecond, 99)).toBe('0 normal'));
});

describe('a blocked beam', () => {
  const clear = hold(1, 0, 9);
  it('is a fault after its delay, for as long as it stays', () =>
    expect(told([...clear, ...hold(98, 10, 60), ...hold(1, 61, 70)], { faultDelay: 20 })).toBe(
      '0 normal, 30 fault, 61 normal',
    ));
  it('says why, and since when', () =>
    expect(run([...clear, ...hold(98, 10, 30)]).changes[1]).toEqual({
      time: 20000,
      state: 'fault',
      since: 10000,
      fault: 'blocked',
    }));
  it('may take 2 s from the last clear sample to the first total one', () => {
    expect(told([...clear, [10, 50], ...hold(90, 11, 40)])).toBe('0 normal, 21 fault');
    expect(told([...clear, [10, 50], [11, 89.9], ...hold(90, 12, 40)])).toBe('0 normal, 20 fire');
  });
  it('is clear below 10 %', () => {
    expect(told([...hold(9.99, 0, 9), ...hold(98, 10, 40)])).toBe('0 normal, 20 fault');
    expect(told([...hold(10, 0, 9), ...hold(98, 10, 40)])).toBe('0 normal, 20 fire');
  });
  it('is no alarm meanwhile, whatever the delays', () =>
    expect(told([...clear, ...hold(98, 10, 400)], { alarmDelay: 1, faultDelay: 300 })).toBe('0 normal, 310 fault'));
  it('cancels the alarm delay of the step on its way', () =>
    expect(told([...clear, [10, 50], ...hold(98, 11, 60)], { alarmDelay: 5 })).toBe('0 normal, 21 fault'));
  it('that falls back but stays past the alarm threshold starts the alarm delay', () => {
    expect(told([...clear, ...hold(98, 10, 30), ...hold(60, 31, 60)])).toBe('0 normal, 20 fault, 31 normal, 41 fire');
    expect(told([...clear, ...hold(98, 10, 15), ...hold(60, 16, 60)])).toBe('0 normal, 26 fire');
  });
  it('that comes back without clear air in between is smoke', () =>
    expect(told([...clear, ...hold(98, 10, 12), [13, 80], ...hold(98, 14, 40)])).toBe('0 normal, 23 fire'));
  it('that comes back after clear air is blocked again', () =>
    expect(told([...clear, ...hold(98, 10, 12), [13, 1], ...hold(98, 14, 40)])).toBe('0 normal, 24 fault'));
  it('is not shown by a log that begins with it', () => expect(told(hold(98, 0, 30))).toBe('0 normal, 10 fire'));
  it('is fire, with a note, where samples stand more than 2 s apart', () => {
    const slow = run([...hold(1, 0, 50, 5), ...hold(98, 55, 100, 5)], {}, { intervalSeconds: 5 });
    expect(slow.changes.map(({ time, state }) => [time / 1000, state])).toEqual([
      [0, 'normal'],
      [65, 'fire'],
    ]);
    expect(slow.memory.block).toMatchObject({ unshownSteps: 1, firstUnshownStep: 55000 });
  });
  it('needs no note where a slow rise is seen', () =>
    expect(run([...clear, [10, 50], [11, 60], [12, 70], ...hold(98, 13, 20)]).memory.block.unshownSteps).toBe(0));
  it('is not clear where an alarm threshold below 10 % is passed already', () =>
    expect(told([...hold(1, 0, 9), ...hold(9, 10, 13), ...hold(98, 14, 40)], { alarmThreshold: 8 })).toBe(
      '0 normal, 20 fire',
    ));
});

describe('every other loss', () => {
  it('leads to fire: a fast partial one', () =>
    expect(told([...hold(1, 0, 9), ...hold(60, 10, 40)])).toBe('0 normal, 20 fire'));
  it('leads to fire: a slow total one', () =>
    expect(told([...Array.from({ length: 60 }, (_, i) => [i, Math.min(2 * i, 100)] as const)])).toBe(
      '0 normal, 28 fire',
    ));
});

describe('a fire signal', () => {
  it('is not withdrawn by the fault that follows (EN 54-12:2002, 4.10)', () => {
    const smokeThenBlocked = [...hold(40, 0, 15), ...hold(1, 16, 20), ...hold(98, 21, 60)];
    expect(told(smokeThenBlocked)).toBe('0 normal, 10 fire');
    expect(told(hold(40, 0, 15).concat(hold(98, 16, 60)), { latching: false })).toBe('0 normal, 10 fire');
  });
  it('ends at a reset, dated at the first sample from then on', () =>
    expect(told([...hold(40, 0, 15), ...hold(1, 16, 99)], {}, { resets: [50_500] })).toBe(
      '0 normal, 10 fire, 51 normal',
    ));
  it('comes again after a reset in smoke', () =>
    expect(told(hold(40, 0, 99), {}, { resets: [50_000] })).toBe('0 normal, 10 fire, 50 normal, 60 fire'));
  it('shows the fault beneath it after a reset', () =>
    expect(told([...hold(40, 0, 15), ...hold(1, 16, 20), ...hold(98, 21, 60)], {}, { resets: [50_000] })).toBe(
      '0 normal, 10 fire, 50 fault',
    ));
  it('is not ended by resets before it', () =>
    expect(told(hold(40, 0, 99), {}, { resets: [-5000, 0, 5000] })).toBe('0 normal, 10 fire'));
  it('clears in clear air where it does not latch', () =>
    expect(told([...hold(40, 0, 15), ...hold(34, 16, 20)], { latching: false })).toBe('0 normal, 10 fire, 16 normal'));
  it('clears where the loss lies below the threshold by the hysteresis', () => {
    const falling = [...hold(40, 0, 15), ...hold(31, 16, 20), ...hold(29, 21, 30)];
    expect(told(falling, { latching: false, hysteresis: 5 })).toBe('0 normal, 10 fire, 21 normal');
  });
});

describe('hysteresis of a fault', () => {
  const blocked = [...hold(1, 0, 9), ...hold(98, 10, 30)];
  it('keeps the fault until the loss lies below its threshold by so much', () =>
    expect(told([...blocked, ...hold(87, 31, 35), ...hold(1, 36, 40)], { hysteresis: 5 })).toBe(
      '0 normal, 20 fault, 36 normal',
    ));
  it('does not hold up the alarm delay of what fell back', () =>
    expect(told([...blocked, ...hold(87, 31, 60)], { hysteresis: 5 })).toBe('0 normal, 20 fault, 41 fire'));
});

describe('a gap', () => {
  it('of more than five intervals stops a delay', () => {
    expect(told([...hold(40, 0, 5), ...hold(40, 10, 30)])).toBe('0 normal, 10 fire');
    expect(told([...hold(40, 0, 5), ...hold(40, 11, 30)])).toBe('0 normal, 21 fire');
  });
  it('stops the delay of a blocked beam, and what follows counts as any other loss', () =>
    expect(told([...hold(1, 0, 9), ...hold(98, 10, 12), ...hold(98, 30, 60)])).toBe('0 normal, 40 fire'));
  it('ends neither a fire nor a fault', () => {
    expect(told([...hold(40, 0, 15), ...hold(40, 100, 120)], { latching: false })).toBe('0 normal, 10 fire');
    expect(told([...hold(1, 0, 9), ...hold(98, 10, 30), ...hold(98, 100, 200)])).toBe('0 normal, 20 fault');
  });
  it('is none where the interval is not known', () =>
    expect(
      told(
        [
          [0, 40],
          [999, 40],
        ],
        {},
        { intervalSeconds: Number.NaN },
      ),
    ).toBe('0 normal, 999 fire'));
  it('is none where samples are only left out', () => {
    const changes: Change[] = [];
    const beam = responder(usual, everySecond, (change) => changes.push(change));
    beam.feed(0, 40);
    beam.feed(59_000, 40, false, true);
    expect(changes.map(({ state }) => state)).toEqual(['normal', 'fire']);
  });
});

describe('the limit of compensation (EN 54-12:2002, 4.8)', () => {
  const feed = (atLimit: readonly boolean[], obscuration = 5) => {
    const changes: Change[] = [];
    const beam = responder(usual, everySecond, (change) => changes.push(change));
    for (const [i, at] of atLimit.entries()) beam.feed(i * 1000, obscuration, at);
    return changes.map(({ time, state, fault }) => [time / 1000, state, fault]);
  };
  it('gives a fault after its delay, until there is gain again', () =>
    expect(feed([...Array(15).fill(true), ...Array(5).fill(false)])).toEqual([
      [0, 'normal', undefined],
      [10, 'fault', 'compensation-limit'],
      [15, 'normal', undefined],
    ]));
  it('withdraws no fire', () => expect(feed(Array(30).fill(true), 50).at(-1)).toEqual([10, 'fire', undefined]));
});

const samples = fc
  .array(
    fc.record({
      step: fc.oneof({ weight: 6, arbitrary: fc.constant(1) }, fc.integer({ min: 1, max: 12 })),
      obscuration: fc.oneof(
        fc.constantFrom(0, 5, 9.9, 10, 34.9, 35, 60, 89.9, 90, 99),
        fc.double({ min: -3, max: 100, noNaN: true }),
        fc.constant(Number.NaN),
      ),
      times: fc.integer({ min: 1, max: 15 }),
    }),
    { maxLength: 30 },
  )
  .map((parts) => {
    const all: Sample[] = [];
    let at = 0;
    for (const { step, obscuration, times } of parts)
      for (let i = 0; i < times; i++) {
        at += step;
        all.push([at, obscuration]);
      }
    return all;
  });
const settings = fc.record({
  alarmThreshold: fc.integer({ min: 5, max: 60 }),
  faultThreshold: fc.integer({ min: 65, max: 99 }),
  alarmDelay: fc.integer({ min: 0, max: 15 }),
  faultDelay: fc.integer({ min: 0, max: 15 }),
  latching: fc.boolean(),
  hysteresis: fc.integer({ min: 0, max: 4 }),
});
const circumstances = fc.record({
  sampling: fc.constantFrom('regular', 'mean', 'on-change'),
  intervalSeconds: fc.constantFrom(1, 2, Number.NaN),
  resets: fc
    .array(fc.integer({ min: 0, max: 300_000 }), { maxLength: 4 })
    .map((resets) => resets.sort((a, b) => a - b)),
});
const seeded = { seed: 20_260_301, numRuns: 400 };

describe('law', () => {
  it('a log cut in two with its memory carried over gives the same changes', () =>
    fc.assert(
      fc.property(samples, settings, circumstances, fc.nat(), (all, set, how, at) => {
        const cut = at % (all.length + 1);
        const changes: Change[] = [];
        const part = (of: readonly Sample[], carried?: ResponderMemory) => {
          const beam = responder(set, how, (change) => changes.push(change), carried);
          for (const [seconds, obscuration] of of) beam.feed(seconds * 1000, obscuration);
          return structuredClone(beam.memory());
        };
        part(all.slice(cut), part(all.slice(0, cut)));
        expect(changes).toEqual(run(all, set, how).changes);
      }),
      seeded,
    ));

  it('a missing sample changes nothing', () =>
    fc.assert(
      fc.property(samples, settings, circumstances, (all, set, how) => {
        const usable = all.filter(([, obscuration]) => !Number.isNaN(obscuration));
        expect(run(all, set, how)).toEqual(run(usable, set, how));
      }),
      seeded,
    ));

  it('fire is left for fault only by a reset or in clear air', () =>
    fc.assert(
      fc.property(samples, settings, circumstances, (all, set, how) => {
        const usable = all.filter(([, obscuration]) => !Number.isNaN(obscuration));
        run(all, set, how).changes.forEach(({ time, state }, i, changes) => {
          if (state !== 'fault' || changes[i - 1]?.state !== 'fire') return;
          const [, obscuration = Number.NaN] = usable.findLast(([seconds]) => seconds * 1000 <= time) ?? [];
          const wasReset = how.resets.some((r) => r <= time && r > (changes[i - 1] as Change).time);
          expect(wasReset || (!set.latching && obscuration < set.alarmThreshold)).toBe(true);
        });
      }),
      seeded,
    ));

  it('a higher alarm threshold and a longer delay never alarm earlier', () =>
    fc.assert(
      fc.property(samples, settings, circumstances, fc.nat(10), fc.nat(10), (all, set, how, more, longer) => {
        const first = (s: typeof set) =>
          run(all, s, how).changes.find(({ state }) => state === 'fire')?.time ?? Number.POSITIVE_INFINITY;
        const alarmThreshold = Math.min(set.alarmThreshold + more, set.faultThreshold - 1);
        const duller = { ...set, alarmThreshold, alarmDelay: set.alarmDelay + longer };
        expect(first(duller)).toBeGreaterThanOrEqual(first(set));
      }),
      seeded,
    ));

  it('states change from entry to entry, and time never runs back', () =>
    fc.assert(
      fc.property(samples, settings, circumstances, (all, set, how) => {
        const { changes } = run(all, set, how);
        changes.forEach(({ time, state, since }, i) => {
          expect(since).toBeLessThanOrEqual(time);
          const before = changes[i - 1];
          if (!before) return;
          expect(state).not.toBe(before.state);
          expect(time).toBeGreaterThanOrEqual(before.time);
        });
      }),
      seeded,
    ));

  it('leaving out the lines that repeat a value changes nothing, at one sample a second', () =>
    fc.assert(
      fc.property(samples, settings, (all, set) => {
        const even = all.filter(([, o]) => !Number.isNaN(o)).map(([, o], i): Sample => [i, o]);
        const changed = even.filter(([, o], i) => i === 0 || o !== even[i - 1]?.[1]);
        const regular = run(even, set, { intervalSeconds: 1 }).changes;
        const onlyChanges = run(changed, set, onChange, even.at(-1)?.[0] ?? 0).changes;
        expect(onlyChanges).toEqual(regular);
      }),
      seeded,
    ));
});

describe('the limit of compensation in a log on change', () => {
  const changes = (atLimitAgain: boolean, until: number) => {
    const told: Change[] = [];
    const beam = responder(usual, onChange, (change) => told.push(change));
    beam.feed(0, 2);
    beam.feed(5000, 2, true);
    beam.feed(12_000, 3, atLimitAgain);
    beam.advance(until);
    return told;
  };
  it('is a fault exactly when it was held for the fault delay', () => {
    expect(changes(true, 14_999)).toHaveLength(1);
    expect(changes(true, 15_000)).toEqual([
      { time: 0, state: 'normal', since: 0 },
      { time: 15_000, state: 'fault', since: 5000, fault: 'compensation-limit' },
    ]);
    expect(changes(true, 99_000)).toHaveLength(2);
  });
  it('is none where it was left in time', () => expect(changes(false, 99_000)).toHaveLength(1));
});

describe('several resets', () => {
  it('each end a fire of their own', () =>
    expect(
      told(
        [...hold(40, 0, 20), ...hold(2, 21, 40), ...hold(40, 41, 60), ...hold(2, 61, 90)],
        {},
        { resets: [30_000, 70_000] },
      ),
    ).toBe('0 normal, 10 fire, 30 normal, 51 fire, 70 normal'));
});
