import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Desk, desk, dropFiles, eventually, type OpenNotebook, plotsDrawn } from './notebook.js';
import { smallLog, smallSite } from './smallLog.js';
import { workbook } from './workbook.js';

let here: Desk;
let open: OpenNotebook;
let folder = '';
beforeAll(async () => {
  here = await desk();
  folder = await mkdtemp(join(tmpdir(), 'notebook-'));
  open = await here.open();
  await open.page.locator('.cell-log').waitFor();
});
afterAll(async () => {
  await here?.close();
  await rm(folder, { recursive: true, force: true });
});

const site = { name: 'hall.json', text: smallSite() };

describe('files from outside', () => {
  it('a gzipped log of several members and its site', async () => {
    const { page } = open;
    const text = smallLog();
    const cut = text.indexOf('\n', text.length / 2) + 1;
    const zipped = Buffer.concat([gzipSync(text.slice(0, cut)), gzipSync(text.slice(cut))]);
    await dropFiles(page, [{ name: 'hall.csv.gz', text: zipped }, site]);
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
    await plotsDrawn(page);
    await expect(page.locator('.cell-log .answer').textContent()).resolves.toMatch(
      /hall\.csv\.gz holds 14,401 lines from 1\sJun\s2027, 05:45 .* Asia\/Kathmandu/,
    );
    const findings = (beam: string) =>
      page.locator('.beam', { has: page.getByRole('heading', { name: `Beam ${beam}` }) });
    const north = findings('north');
    await expect(north.textContent()).resolves.toMatch(/Knocked out of aim/);
    await expect(findings('south').textContent()).resolves.not.toMatch(/act/);
  });

  it('a log that cannot be used says what is wrong, and the last good one comes back by undo', async () => {
    const { page } = open;
    await dropFiles(page, [{ name: 'poem.csv', text: 'roses,violets\nred,blue\n' }]);
    const trouble = page.locator('.cell-log .trouble');
    await trouble.waitFor();
    await expect(trouble.textContent()).resolves.toMatch(/This log cannot be used: .*poem\.csv/);
    await expect(page.locator('.cell-signal').textContent()).resolves.toMatch(/has not been read/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
  });

  it('a site file that cannot be used names the key', async () => {
    const { page } = open;
    await dropFiles(page, [{ name: 'hall.json', text: smallSite().replace('"separation"', '"seperation"') }]);
    await eventually(() => page.locator('.cell-log .trouble').textContent()).toMatch(
      /hall\.json.*seperation.*separation/,
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
  });

  it.each([
    ['empty', ''],
    ['binary', Buffer.from(Array.from({ length: 5000 }, (_, i) => (i * 37) % 256))],
    ['named .gz and not gzip', 'time,north,south\n'],
  ])('refuses a file that is %s in words', async (_what, text) => {
    const { page } = open;
    await dropFiles(page, [{ name: 'odd.csv.gz', text }]);
    const told = page.locator('.cell-log .trouble .told');
    await eventually(() => told.textContent()).toMatch(/odd\.csv\.gz/);
    await expect(told.textContent()).resolves.not.toMatch(/at .*\.js/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
  });

  it('a panel’s list is joined to the log, and said where there is none', async () => {
    const { page } = open;
    await eventually(() => page.locator('.cell-events').textContent()).toMatch(/Drop the panel’s list/);
    await dropFiles(page, [
      {
        name: 'panel.csv',
        text: 'time,beam,what\n2027-06-04T09:36:00Z,north,fault\n2027-06-05T09:00:00Z,south,fire\n',
      },
    ]);
    await eventually(() => page.locator('.cell-events tbody tr').count()).toBe(2);
    await expect(page.locator('.cell-events tbody').textContent()).resolves.toMatch(/north.*fault.*south.*fire/s);
  });

  it('a long log is read by two workers, and says what one makes of it', async () => {
    const { page } = open;
    const path = join(folder, 'wide.csv');
    const text = smallLog().replace(/\n/g, `,${'-'.repeat(1200)}\n`);
    await writeFile(path, text);
    await writeFile(`${path}.gz`, gzipSync(text));
    const told: string[] = [];
    for (const [file, two] of [
      [`${path}.gz`, false],
      [path, true],
    ] as const) {
      const asked = open.requests.length;
      await page.getByLabel('Log files and site file').setInputFiles(file);
      await page.locator('.cell-log .answer', { hasText: `${basename(file)} holds` }).waitFor();
      const workers = open.requests.slice(asked).filter((address) => address.includes('rowsWorker'));
      expect(workers.length > 0).toBe(two);
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save as JSON' }).click();
      told.push(await readFile(await (await download).path(), 'utf8'));
    }
    expect(told[0]).toContain('misalignment-step');
    expect(told[1]).toBe(told[0]);
  });

  it('stops a long reading for good', async () => {
    const { page } = open;
    const [header = '', ...lines] = smallLog().trimEnd().split('\n');
    const path = join(folder, 'long.csv');
    await writeFile(path, `${header}\n${`${lines.join('\n')}\n`.repeat(60)}`);
    await page.getByLabel('Log files and site file').setInputFiles(path);
    await page.locator('.progress').getByRole('button', { name: 'Stop' }).click();
    await eventually(() => page.locator('.cell-log .trouble').textContent()).toMatch(/Reading was stopped/);
    await expect(page.locator('table.beams').count()).resolves.toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
  });

  it('asks for the site of a log that comes without one', async () => {
    const fresh = await here.open();
    const { page } = fresh;
    await page.locator('.cell-log').waitFor();
    await dropFiles(page, [{ name: 'hall.csv', text: smallLog() }]);
    const form = page.locator('.site-form');
    await form.waitFor();
    await expect(form.getByLabel('What column north is').inputValue()).resolves.toBe('beam');
    for (const name of ['north', 'south'])
      await form
        .getByRole('group', { name: `Beam ${name}` })
        .getByLabel('Separation')
        .fill('40');
    await form.getByLabel('Time zone').selectOption('UTC');
    await form.getByRole('button', { name: 'Use this site' }).click();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
    await expect(page.locator('.cell-log .answer').textContent()).resolves.toMatch(/1\sJun\s2027, 00:00 .* UTC/);
    await fresh.close();
  });
});

describe('workbooks', () => {
  it('a log saved as XLSX', async () => {
    const { page } = open;
    const rows = smallLog()
      .trimEnd()
      .split('\n')
      .slice(0, 4 * 1440)
      .map((line) => line.split(','));
    await dropFiles(page, [{ name: 'hall.xlsx', text: workbook(rows) }, site]);
    await eventually(() => page.locator('.cell-log .answer').textContent()).toMatch(/hall\.xlsx holds 5,760 lines/);
  });
});

describe('hostile names', () => {
  const names = ['<img src=x onerror="document.title=1">', '__proto__'] as const;

  it('are shown as text everywhere', async () => {
    const { page, errors } = open;
    const seen = errors.length;
    await dropFiles(page, [
      { name: '<b>bold.csv', text: smallLog(names) },
      { name: 'hall.json', text: smallSite(names, '<script>document.title=1</script>') },
    ]);
    await page.locator('table.beams', { hasText: '__proto__' }).waitFor();
    await plotsDrawn(page);
    await expect(page.title()).resolves.toBe('beamkeep');
    await expect(page.locator('main img').count()).resolves.toBe(0);
    await expect(page.locator('.head').textContent()).resolves.toMatch(/<script>document\.title=1<\/script>/);
    await expect(page.locator('.lane-head').first().textContent()).resolves.toMatch(/^<img src=x/);
    expect(errors.slice(seen).filter((error) => !/Content Security Policy/.test(error))).toEqual([]);
  });
});
