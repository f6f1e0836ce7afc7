import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium, type Page } from 'playwright-core';
import { findChromium } from '../browser/findChromium.js';
import { serveFolder } from '../browser/serveFolder.js';
import { floorFolder, makeLog, makeSite } from './invented.mjs';

/*
 * From the drop of a log on the built notebook until its findings are shown, beside `beamkeep diagnose` of the same
 * file: wall time, in turn, each run in a fresh browser that shows the demo and has come to rest.
 *
 *   npm run bench:notebook -- [--floor DIR] [--rows 10000000] [--runs 5]
 */

const { values: options } = parseArgs({
  options: {
    floor: { type: 'string' },
    rows: { type: 'string', default: '10000000' },
    runs: { type: 'string', default: '5' },
  },
});
const root = process.cwd();
const folder = mkdtempSync(join(tmpdir(), 'beamkeep-bench-'));
process.once('SIGINT', () => process.exit(130));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
const [log, site] = [join(folder, 'log.csv'), join(folder, 'site.json')];
makeSite(site);
makeLog(floorFolder(root, options.floor, ['make-log.mjs']), log, Number(options.rows), join(folder, 'truth.json'));

/** Seconds that the command takes. */
function command(): number {
  const began = performance.now();
  const cli = join(root, 'packages', 'cli', 'bin', 'beamkeep.js');
  const { status } = spawnSync(process.execPath, [cli, 'diagnose', log, '--site', site], { stdio: 'ignore' });
  if (status === 2) throw new Error('beamkeep diagnose refused the log');
  return (performance.now() - began) / 1000;
}

/** Seconds from the drop until the first finding of the log has been painted. */
async function shown(page: Page): Promise<number> {
  await page.locator('.finding').first().waitFor();
  await page.locator('main[aria-busy="false"]').waitFor();
  await page.waitForTimeout(10_000); // what the demo's cells ask for is answered by then
  await page.evaluate(`
    addEventListener('change', () => { window.dropped ??= performance.now(); }, true);
    new MutationObserver(() => {
      const answer = document.querySelector('.cell-log .answer')?.textContent ?? '';
      if (!answer.trim().startsWith('log.csv holds') || !document.querySelector('.finding')) return;
      requestAnimationFrame(() => setTimeout(() => { window.shown ??= performance.now(); }));
    }).observe(document, { subtree: true, childList: true });
  `);
  await page.getByLabel('Log files and site file').first().setInputFiles([log, site]);
  await page.waitForFunction(() => 'shown' in globalThis, undefined, { timeout: 300_000 });
  return (await page.evaluate<number>('window.shown - window.dropped')) / 1000;
}

const served = await serveFolder(join(root, 'notebook', 'dist'), '/some/where/');
const executablePath = await findChromium();
const runs: { readonly command: number; readonly notebook: number }[] = [];
console.log(`${options.rows} rows of four beams; load ${loadavg()[0]?.toFixed(1)} as it begins`);
for (let run = 0; run < Number(options.runs); run++) {
  const took = command();
  const browser = await chromium.launch({ executablePath });
  const context = await browser.newContext();
  await context.addInitScript("localStorage.setItem('beamkeep-guide', 'seen')");
  const page = await context.newPage();
  await page.goto(served.url);
  runs.push({ command: took, notebook: await shown(page) });
  await browser.close();
}
await served.close();

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const ratios = runs.map(({ command, notebook }) => notebook / command).sort((a, b) => a - b);
console.log(
  `beamkeep diagnose ${median(runs.map(({ command }) => command)).toFixed(2)} s, notebook ` +
    `${median(runs.map(({ notebook }) => notebook)).toFixed(2)} s; ratio of each pair ${median(ratios).toFixed(2)}, ` +
    `from ${ratios[0]?.toFixed(2)} to ${ratios.at(-1)?.toFixed(2)}; load ${loadavg()[0]?.toFixed(1)} as it ends`,
);
