import { gzipSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { damagedGzip, unzipped } from './unzipped.js';

const text = (length: number): Uint8Array => Uint8Array.from({ length }, (_, at) => 48 + ((at * at) % 10));

async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let from = 0; from < bytes.length; from += size) yield bytes.slice(from, from + size);
}
async function read(bytes: Uint8Array, size: number) {
  const damages: string[] = [];
  const out: number[] = [];
  for await (const chunk of unzipped(pieces(bytes, size), {}, (what) => damages.push(what))) out.push(...chunk);
  return { bytes: Uint8Array.from(out), damages };
}
const joined = (...parts: Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((part) => [...part]));

const a = text(1500);
const b = text(300);
const members = joined(gzipSync(a), gzipSync(b), gzipSync(a));

describe('unzipped', () => {
  it.each([1, 2, 7, 5000])('members in a row, %d bytes at a time', async (size) => {
    expect(await read(members, size)).toEqual({ bytes: joined(a, b, a), damages: [] });
  });
  it('what is not gzip passes as it is', async () => {
    for (const plain of [strToU8('time,b1\n'), strToU8('x'), new Uint8Array(0)]) {
      expect(await read(plain, 3)).toEqual({ bytes: plain, damages: [] });
    }
  });
  it('wherever it is cut, that is told, and what came before is given', async () => {
    for (let cut = 20; cut < members.length; cut += 3) {
      const { bytes, damages } = await read(members.subarray(0, cut), 150);
      const ends = [gzipSync(a).length, gzipSync(a).length + gzipSync(b).length];
      if (ends.includes(cut)) expect(damages).toEqual([]);
      else expect(damages).toEqual([damagedGzip]);
      expect(joined(a, b, a).subarray(0, bytes.length)).toEqual(bytes);
    }
  });
  it('a bit gone wrong is told', async () => {
    let told = 0;
    for (let at = 12; at < members.length; at += 5) {
      const { damages } = await read(
        members.map((byte, k) => (k === at ? byte ^ 16 : byte)),
        400,
      );
      told += damages.length;
    }
    expect(told).toBeGreaterThanOrEqual(Math.floor((members.length - 12) / 5) - 8); // headers hold bytes that mean nothing
  });
  it('bytes behind the last member are left out, and told', async () => {
    const { bytes, damages } = await read(joined(gzipSync(a), strToU8('not gzip at all')), 100);
    expect(bytes).toEqual(a);
    expect(damages).toEqual(['bytes after the gzip data are not gzip: left out']);
  });
});
