import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Desk, desk, eventually, type OpenNotebook, openSmall, settled } from './notebook.js';
import { smallLog } from './smallLog.js';

/*
 * A sheet with its log in one file. The log is long, so the page itself must never have it as text: it hands files to
 * workers and gets files back.
 */

let here: Desk;
let open: OpenNotebook;
beforeAll(async () => {
  here = await desk();
  open = await openSmall(here);
});
afterAll(() => here?.close());

/** A saved file with the log in it. */
async function savedWithLog(page: Page, button = 'Save with log'): Promise<Buffer> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  return readFile(await (await download).path());
}

const openFile = (page: Page, buffer: Buffer): Promise<void> =>
  page.getByLabel('A saved worksheet').setInputFiles([{ name: 'june.json', mimeType: 'application/json', buffer }]);

/** Waits until the log of the file has been read: what the page showed of another before is gone. */
async function openedAnew(page: Page, file: Buffer): Promise<void> {
  const table = page.locator('table.beams', { hasText: 'north' });
  await table.evaluate((before) => before.setAttribute('data-before', ''));
  await openFile(page, file);
  await page.locator('table.beams:not([data-before])', { hasText: 'north' }).waitFor();
}

/** A sheet file in which the log's bytes are turned into others. */
function spoilt(file: Buffer): Buffer {
  const sheet: { shelf: Record<string, { base64: string[] }[]> } = JSON.parse(file.toString());
  for (const entry of Object.values(sheet.shelf).flat())
    entry.base64 = entry.base64.map((text) => text.replace(/[^=]{400}(?==*$)/, (end) => [...end].reverse().join('')));
  return Buffer.from(JSON.stringify(sheet));
}

/** Run in the page: empties the browser's own store of log files. */
const emptied = `new Promise((done, fail) => {
  const open = indexedDB.open('beamkeep-shelf');
  open.onerror = fail;
  open.onsuccess = () => {
    open.result.transaction('logs', 'readwrite').objectStore('logs').clear().onsuccess = () => done(true);
  };
})`;

const watching = new URL('watchTexts.js', import.meta.url);

const seenTexts = (page: Page): Promise<{ longest: number; streams: number }> => page.evaluate('seen');

describe('a sheet with its log in one file', () => {
  it('is packed and opened without the page’s thread ever holding the log as text', async () => {
    const { page } = open;
    await page.evaluate(await readFile(watching, 'utf8'));
    const whole = await savedWithLog(page);
    const saving = await seenTexts(page);
    await openedAnew(page, whole);
    const opening = await seenTexts(page);
    // The sheet itself, its autosave and the site file are some thousand letters; drawn lines are shorter than the log.
    expect(smallLog().length).toBeGreaterThan(300_000);
    expect(whole.length).toBeGreaterThan(70_000);
    expect(saving.longest).toBeGreaterThan(0);
    expect(saving.longest).toBeLessThan(30_000);
    expect(opening.longest).toBeLessThan(70_000);
    expect([saving.streams, opening.streams]).toEqual([0, 0]);
  });

  it('opened over itself is read anew; a damaged copy never takes the place of the log at hand', async () => {
    const { page } = open;
    const reduced = await savedWithLog(page, 'Save with reduced log');
    const whole = await savedWithLog(page);
    await openedAnew(page, whole);
    await openFile(page, spoilt(whole));
    await eventually(() => page.locator('.notice').textContent()).toMatch(/the log ".*" in it is damaged/);
    await page.locator('.notice').getByRole('button', { name: 'Close' }).click();
    await expect(page.locator('table.beams', { hasText: 'north' }).count()).resolves.toBe(1);
    await openFile(page, spoilt(reduced));
    await eventually(() => page.locator('.cell-log .trouble').textContent()).toMatch(/this reduced log is damaged/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
    await expect(page.locator('.cell-log .answer').textContent()).resolves.toMatch(/14,401 lines/);
  });

  it('opens where the browser does not hold the log any more', async () => {
    const { page } = open;
    const whole = await savedWithLog(page);
    await page.locator('.saved', { hasText: 'saved in this browser' }).waitFor();
    await page.evaluate(emptied);
    await page.reload();
    await eventually(() => page.locator('.cell-log .trouble').textContent()).toMatch(/does not hold the log any more/);
    await openFile(page, whole);
    await page.locator('table.beams', { hasText: 'north' }).waitFor();
  });
});
