import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCell, type Desk, desk, eventually, type OpenNotebook, openSmall, plotsDrawn, settled } from './notebook.js';

let here: Desk;
beforeAll(async () => {
  here = await desk();
});
afterAll(() => here?.close());

async function writeNote(page: Page, text: string): Promise<void> {
  await addCell(page, 'a note of your own');
  await page.getByLabel('Note in Markdown').fill(text);
}

const saved = (page: Page) => page.locator('.saved', { hasText: 'saved in this browser' });

describe('what is kept', () => {
  let open: OpenNotebook;
  beforeAll(async () => {
    open = await openSmall(here);
  });
  afterAll(() => open?.close());

  it('undo and redo, by buttons and by keys', async () => {
    const { page } = open;
    const count = await page.locator('.cell').count();
    await page.locator('.cell-units').getByRole('button', { name: 'remove' }).click();
    await expect(page.locator('.cell').count()).resolves.toBe(count - 1);
    await page.keyboard.press('Control+z');
    await eventually(() => page.locator('.cell').count()).toBe(count);
    await page.keyboard.press('Control+Shift+z');
    await eventually(() => page.locator('.cell').count()).toBe(count - 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('.cell-units').getByRole('button', { name: 'up' }).click();
    await page.locator('.cell-units').getByRole('button', { name: 'fold', exact: true }).click();
    await expect(page.locator('.cell-units .cell-body').count()).resolves.toBe(0);
  });

  it('a note is Markdown, and nothing in it can act', async () => {
    const { page } = open;
    await writeNote(
      page,
      'The **third** bay.\n\n<img src=x onerror="document.title=1"><script>document.title=2</script>\n\n[x](javascript:document.title=3)',
    );
    await page.getByRole('button', { name: 'Done' }).click();
    await page.locator('.prose strong', { hasText: 'third' }).waitFor();
    await expect(page.locator('.prose img, .prose script').count()).resolves.toBe(0);
    await expect(page.locator('.prose a[href^="javascript"]').count()).resolves.toBe(0);
    await expect(page.title()).resolves.toBe('beamkeep');
  });

  it('refuses a damaged file and a newer version in words, and keeps what was open', async () => {
    const { page } = open;
    const toldOf = async (text: string): Promise<string | null> => {
      await page
        .getByLabel('A saved worksheet')
        .setInputFiles([{ name: 'sheet.json', mimeType: 'application/json', buffer: Buffer.from(text) }]);
      await page.locator('.notice').waitFor();
      const told = await page.locator('.notice p').textContent();
      await page.locator('.notice').getByRole('button', { name: 'Close' }).click();
      return told;
    };
    expect(await toldOf('{"format": "beamkeep-sheet/1", "title": ')).toMatch(
      /sheet\.json cannot be opened.*not complete JSON/,
    );
    expect(await toldOf('{"format": "beamkeep-sheet/7"}')).toMatch(/version "7".*newer notebook.*stays as it was/);
    await expect(page.locator('.finding').count()).resolves.toBeGreaterThan(0);
  });

  it('the sheet and its log come back at the next visit', async () => {
    const { page } = open;
    await page.getByLabel('Title of this sheet').fill('North hall in June');
    await saved(page).waitFor();
    await page.reload();
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
    await expect(page.getByLabel('Title of this sheet').inputValue()).resolves.toBe('North hall in June');
  });

  it('opens without a network at the second visit', async () => {
    const { page } = open;
    await page.evaluate('navigator.serviceWorker.ready');
    await eventually(() => page.evaluate('navigator.serviceWorker.controller !== null')).toBe(true);
    await page.context().setOffline(true);
    await page.reload();
    await settled(page);
    await page.context().setOffline(false);
  });

  it('saves to one file with its log, and opens it elsewhere', async () => {
    await writeNote(open.page, 'seen on site');
    const download = open.page.waitForEvent('download');
    await open.page.getByRole('button', { name: 'Save with log', exact: true }).click();
    const buffer = await readFile(await (await download).path());

    const second = await here.open();
    await second.page.locator('.cell-log').waitFor();
    await second.page
      .getByLabel('A saved worksheet')
      .setInputFiles([{ name: 'june.json', mimeType: 'application/json', buffer }]);
    await second.page.locator('table.beams', { hasText: 'north' }).waitFor();
    await second.page.locator('.prose', { hasText: 'seen on site' }).waitFor();
    await second.close();
  });

  it('saves to one file with its reduced log, which finds the same elsewhere and says what it cannot tell', async () => {
    const found = (page: Page) => page.locator('.cell-findings .finding h4, .cell-findings .when').allTextContents();
    const before = await found(open.page);
    const download = open.page.waitForEvent('download');
    await open.page.getByRole('button', { name: 'Save with reduced log' }).click();
    const buffer = await readFile(await (await download).path());

    const { page, close, errors } = await here.open();
    await page.locator('.cell-log').waitFor();
    const openFile = (file: Buffer): Promise<void> =>
      page
        .getByLabel('A saved worksheet')
        .setInputFiles([{ name: 'june.json', mimeType: 'application/json', buffer: file }]);
    await openFile(buffer);
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
    await expect(page.locator('.cell-log .answer').textContent()).resolves.toMatch(/The log in this sheet is reduced/);
    await eventually(() => found(page)).toEqual(before);
    await page.locator('.cell-signal .main-svg').first().waitFor();
    await addCell(page, 'threshold and delay: time to alarm against nuisance');
    await eventually(() => page.locator('.cell-tradeoff .trouble').textContent()).toMatch(/drop the whole log/);

    const sheet: { shelf: Record<string, { base64: string[] }[]> } = JSON.parse(buffer.toString());
    const [file] = Object.values(sheet.shelf)[0] ?? [];
    if (!file) throw new Error('no log in the file');
    const spoilt = (base64: string): Buffer => {
      file.base64 = [base64];
      return Buffer.from(JSON.stringify(sheet));
    };
    const bytes = Buffer.from(file.base64.join(), 'base64');
    bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 255;
    await openFile(spoilt(bytes.toString('base64')));
    await eventually(() => page.locator('.cell-log .trouble').textContent()).toMatch(
      /This log cannot be used: .*this reduced log is damaged.*settings and notes are as they were/,
    );
    await openFile(spoilt('not base64!'));
    await eventually(() => page.locator('.notice').textContent()).toMatch(
      /the log ".*" in it is damaged.*stays as it was/,
    );
    expect(errors.filter((error) => !/inline style/.test(error))).toEqual([]);
    await close();
  });
});

describe('what goes out', () => {
  let open: OpenNotebook;
  beforeAll(async () => {
    open = await openSmall(here, { colorScheme: 'dark' });
  });
  afterAll(() => open?.close());

  it('the report is one light file that shows the plots and needs nothing', async () => {
    const { page } = open;
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Report' }).click();
    const path = await (await download).path();
    const html = await readFile(path, 'utf8');
    expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    const report = await page.context().newPage();
    const asked: string[] = [];
    report.on('request', (request) => asked.push(request.url()));
    await report.setContent(html);
    await expect(report.locator('.plot > svg').count()).resolves.toBe(await page.locator('.plot').count());
    await expect(report.locator('.finding').count()).resolves.toBe(await page.locator('.finding').count());
    await expect(report.locator('button, select, input').count()).resolves.toBe(0);
    await report.close();
    expect(asked.filter((url) => !url.startsWith('data:'))).toEqual([]);
  });

  it('what was found on site stands in the report', async () => {
    const { page } = open;
    const finding = page.locator('.finding').first();
    await finding.getByLabel('On site').selectOption('confirmed');
    await finding.getByLabel('note').fill('bracket bent');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Report' }).click();
    const html = await readFile(await (await download).path(), 'utf8');
    expect(html).toMatch(/On site: confirmed on site\. bracket bent/);
  });

  it('prints light in the dark theme, with its plots', async () => {
    const { page } = open;
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    await plotsDrawn(page);
  });

  it('findings go out as CSV and as JSON', async () => {
    const { page } = open;
    const text = async (button: string): Promise<string> => {
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: button }).click();
      return readFile(await (await download).path(), 'utf8');
    };
    const csv = await text('Save as CSV');
    expect(csv.split('\r\n')[0]).toMatch(/^number,beam,cause,severity/);
    expect(csv).toMatch(/,misalignment-step,/);
    expect(JSON.parse(await text('Save as JSON')).format).toBe('beamkeep-diagnosis/1');
  });
});
