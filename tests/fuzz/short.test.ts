import { gzipSync } from 'node:zlib';
import { parseSite, respond, UsageError } from 'beamkeep';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beamkeep, scratch, siteText } from '../cli/run.js';
import { targets } from './targets.js';

describe('a short run of each', () => {
  it.each(targets)('$name', ({ property }) => fc.assert(property(), { seed: 11, numRuns: 25 }));
});

describe('single things of great size', () => {
  const { write } = scratch();
  const refusal = async (site: string): Promise<string> => {
    try {
      parseSite(site, 'site.json');
    } catch (error) {
      expect(error).toBeInstanceOf(UsageError);
      return String(error);
    }
    throw new Error('not refused');
  };

  it('a site file nested a hundred thousand deep', async () =>
    expect(await refusal('['.repeat(100_000) + ']'.repeat(100_000))).toContain('site.json'));

  it('numbers beyond all numbers', async () =>
    expect(await refusal(siteText().replace('40', '1e309'))).toContain('separation'));

  it('a million columns', async () => {
    const names = Array.from({ length: 1_000_000 }, (_, at) => at.toString(36)).join(',');
    const text = new TextEncoder().encode(`time,${names}\n`);
    async function* bytes() {
      yield text;
    }
    await expect(respond({ name: 'wide.csv', bytes: bytes() }, parseSite(siteText()))).rejects.toThrow(UsageError);
  });

  it('a gigabyte of zeros, zipped, is refused in bounded memory', async () => {
    const member = gzipSync(new Uint8Array(1 << 26));
    const log = await write('zeros.csv.gz', Buffer.concat(Array.from({ length: 16 }, () => member)));
    const peak = 'data:text/javascript,process.on("exit",()=>console.log(process.resourceUsage().maxRSS))';
    const site = await write('zeros.site.json', siteText());
    const { code, out, err } = await beamkeep(['respond', log, '--site', site], { node: ['--import', peak] });
    expect(code).toBe(2);
    expect(err).toMatch(/^beamkeep: [^\n]*zeros\.csv\.gz[^\n]+\n$/);
    expect(Number(out)).toBeLessThan(350_000); // kB
  });
});
