import { describe, expect, it } from 'vitest';
import { day, minute } from '../columns/index.js';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { type BeamFacts, readBeams } from './readBeams.js';
import { readTraces } from './readTraces.js';

const site = (beams: object[], more: object = {}) =>
  parseSite({
    ...more,
    timeFormat: 'unix-milliseconds',
    beams: beams.map((beam, i) => ({ id: `B${i + 1}`, layout: 'reflective', separation: 62, ...beam })),
  });

async function read(text: string, of: ReturnType<typeof site>) {
  const beams = new Map<string, { facts: BeamFacts; samples: [number, number][]; end: number }>();
  await readBeams(logOfText(text), of, (facts) => {
    const seen = { facts, samples: [] as [number, number][], end: Number.NaN };
    beams.set(facts.beam.id, seen);
    return {
      rows(time, readings, count) {
        for (let row = 0; row < count; row++) seen.samples.push([time[row] as number, readings[row] as number]);
      },
      end(last) {
        seen.end = last;
      },
    };
  });
  return beams;
}

/** Ten days of counts, every ten minutes, the first of them dark. */
const tenDays = ['time,a,b'];
for (let t = 0; t < 10 * day; t += 10 * minute)
  tenDays.push(`${t},${t < day ? 40 : 2000 - (t % 7)},${t % day ? 5 : ''}`);

describe('readBeams', () => {
  it('gives every usable sample once, in order, and the end of the whole log', async () => {
    const beams = await read(
      'time,a,b\n0,99,98\n1000,,97\n2000,96,\n3000,,',
      site([{ signalColumn: 'a' }, { signalColumn: 'b' }]),
    );
    expect(beams.get('B1')).toMatchObject({
      samples: [
        [0, 99],
        [2000, 96],
      ],
      end: 3000,
      facts: { intervalSeconds: 2 },
    });
    expect(beams.get('B2')).toMatchObject({
      samples: [
        [0, 98],
        [1000, 97],
      ],
      end: 3000,
      facts: { intervalSeconds: 1 },
    });
  });

  it.each(['regular', 'on-change'])(
    'finds interval and clean air as the condensed records do (%s)',
    async (sampling) => {
      const both = site(
        [
          { signalColumn: 'a', signalUnit: 'counts' },
          { signalColumn: 'b', signalUnit: 'counts', cleanAir: 6 },
        ],
        { sampling },
      );
      const text = tenDays.join('\n');
      const beams = await read(text, both);
      const { records } = await readTraces(logOfText(text), both);
      for (const { id, intervalSeconds, assumed } of records)
        expect(beams.get(id)?.facts).toMatchObject({ intervalSeconds, assumed });
      expect(beams.get('B1')?.facts.beam.cleanAir).toBeGreaterThan(1990);
      expect(beams.get('B1')?.samples).toHaveLength(1440);
      expect(beams.get('B2')?.facts.beam.cleanAir).toBe(6);
    },
  );

  it('begins a beam without samples, too', async () => {
    const beams = await read(
      'time,a,b\n0,99,\n1000,98,',
      site([{ signalColumn: 'a' }, { signalColumn: 'b', signalUnit: 'counts' }]),
    );
    expect(beams.get('B2')).toMatchObject({ samples: [], end: 1000, facts: { assumed: [] } });
  });
});
