import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { type CommissioningRecord, parseRecord } from 'beamkeep/commissioning';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dayFile, give } from './commissioningDay.js';
import { addCell, type Desk, desk, dropFiles, eventually, type OpenNotebook, settled, violations } from './notebook.js';
import { smallLog, smallSite } from './smallLog.js';

let here: Desk;
beforeAll(async () => {
  here = await desk();
});
afterAll(() => here?.close());

type Opened = OpenNotebook & { readonly cell: Locator };

/** A record cell at the end of the demo, with the depot's invented day. */
async function openDay(): Promise<Opened> {
  const open = await here.open();
  await settled(open.page);
  const cell = await addRecord(open.page);
  await cell.getByRole('button', { name: 'invented commissioning day' }).click();
  await cell.locator('.record-front', { hasText: 'Inês Moreira' }).waitFor();
  return { ...open, cell };
}

/** A record cell below a site that has no log. */
async function openSite(): Promise<Opened> {
  const open = await here.open();
  const { page } = open;
  await page.locator('.cell-log').waitFor();
  await addCell(page, 'a log and its site');
  await page
    .getByLabel('Log files and site file')
    .last()
    .setInputFiles([{ name: 'hall.json', mimeType: 'application/json', buffer: Buffer.from(smallSite()) }]);
  await addCell(page, 'thresholds in smoke, under dirt, against standards');
  return { ...open, cell: await addRecord(page) };
}

async function addRecord(page: Page): Promise<Locator> {
  await addCell(page, 'the commissioning record');
  const cell = page.locator('.cell-record').last();
  await cell.locator('.record-front').waitFor();
  return cell;
}

/** What a button hands to the downloads. */
async function saved(page: Page, button: Locator): Promise<string> {
  const download = page.waitForEvent('download');
  await button.click();
  return readFile(await (await download).path(), 'utf8');
}

const savedRecord = async ({ page, cell }: Opened): Promise<CommissioningRecord> =>
  parseRecord(await saved(page, cell.getByRole('button', { name: 'Save as JSON' })));

describe('the record cell below a site without a log', () => {
  let open: Opened;
  beforeAll(async () => {
    open = await openSite();
  });
  afterAll(() => open?.close());

  it('shows what is missing as missing', async () => {
    const { page, cell } = open;
    await eventually(() => page.locator('.cell-thresholds').last().textContent()).toMatch(
      /Who may change a threshold.*Beam north/,
    );
    const wall = page.locator('.cell-thresholds table').filter({ hasText: 'Smoke that alarms' }).first();
    await expect(wall.locator('tbody tr').allTextContents()).resolves.toHaveLength(9);
    await expect(wall.textContent()).resolves.toMatch(/20 m.*dB\/m.*%\/ft.*100 m/);
    const front = cell.locator('.record-front');
    for (const gap of ['the day of the work', 'who did the work', 'the impairment', 'a log of the received signal'])
      await expect(front.textContent()).resolves.toContain(gap);
    await expect(front.locator('.missing', { hasText: 'not scanned' }).count()).resolves.toBe(2);
    const record = await savedRecord(open);
    expect([record.log, record.findings, record.impairment, record.date]).toEqual([null, null, null, '']);
  });

  it('is filled in by keys alone', async () => {
    const { page, cell } = open;
    await cell.getByRole('button', { name: 'Add a person', exact: true }).press('Enter');
    await eventually(() => page.evaluate('document.activeElement.tagName')).toBe('INPUT');
    await page.keyboard.type('commissioning');
    await page.keyboard.press('Tab');
    await page.keyboard.type('A. Person');
    await eventually(() => cell.locator('.record-front').textContent()).toMatch(/commissioningA\. Person/);
    await cell.getByRole('button', { name: 'take out person 1' }).press('Enter');
    await eventually(() => page.evaluate('document.activeElement.textContent')).toBe('Add a person');
    await eventually(() => cell.locator('.record-front').textContent()).not.toMatch(/A\. Person/);
  });

  it('follows the cells above: a test that cannot be used is told by the number of its cell', async () => {
    const { page, cell } = open;
    await addCell(page, 'a covered test');
    const test = page.locator('.cell-covered');
    await give(test, 'log of a covered test', 'scan-b1.csv', dayFile('scan-b1.csv'));
    await test.locator('.trouble').waitFor();
    await expect(cell.locator('.record-front').textContent()).resolves.not.toMatch(/could not be used/);
    await test.getByRole('button', { name: 'up' }).click();
    await eventually(() => cell.locator('.record-front').textContent()).toMatch(
      /north covered test of cell \d+: could not be used/,
    );
  });
});

describe('the record of an invented day', () => {
  let open: Opened;
  beforeAll(async () => {
    open = await openDay();
  });
  afterAll(() => open?.close());

  it('the day goes in as one step, comes out by undo, back by redo', async () => {
    const { page, cell } = open;
    const kinds = () => page.locator('.cell').count();
    const full = await kinds();
    const toolbar = page.locator('.toolbar');
    await toolbar.getByRole('button', { name: 'Undo' }).click();
    await eventually(kinds).toBe(full - 11);
    await toolbar.getByRole('button', { name: 'Redo' }).click();
    await eventually(kinds).toBe(full);
    await cell.locator('.record-front', { hasText: 'Inês Moreira' }).waitFor();
  });

  it('gathers the tests of the cells above, what was found on site, and what people wrote', async () => {
    const { page, cell, errors } = open;
    await expect(cell.locator('.answer').textContent()).resolves.toMatch(/gathers 11 tests/);
    const glance = cell.locator('.record-front tr');
    await expect(glance.filter({ hasText: /^B2/ }).first().textContent()).resolves.toMatch(/on the peakfitFAIL/);
    await expect(glance.filter({ hasText: /^B4/ }).first().textContent()).resolves.toMatch(/not proved/);
    const finding = page.locator('.finding').filter({ hasText: 'Knocked out of aim' }).first();
    await finding.getByLabel('On site').selectOption('relabelled');
    await finding.getByLabel('namely').selectOption('obstruction');
    await finding.getByLabel('note').fill('a banner');
    await eventually(() => cell.locator('.record-front').textContent()).toMatch(
      /it was something else, namely obstruction\. a banner/,
    );
    const record = await savedRecord(open);
    expect(record.beams.map(({ proof }) => proof?.verdict)).toEqual(['pass', 'fail', 'pass', undefined]);
    expect(record.beams.map(({ aim }) => aim?.movement.length)).toEqual([3, 3, 3, 3]);
    expect(record.impairment?.told).toHaveLength(2);
    expect(record.findings).toContainEqual(
      expect.objectContaining({ onSite: { verdict: 'relabelled', cause: 'obstruction', note: 'a banner' } }),
    );
    expect(errors.filter((error) => !/inline style.*Content Security Policy/.test(error))).toEqual([]);
  });

  it('shows the record as it prints, in a frame in which nothing runs, and saves that very page', async () => {
    const { page, cell } = open;
    const inside = cell.locator('iframe').contentFrame();
    await eventually(() => inside.locator('h2').allTextContents()).toContain('Beam B4');
    const size = "getComputedStyle(document.querySelector('iframe').contentDocument.querySelector('h1')).fontSize";
    await expect(page.evaluate(size)).resolves.toBe('24px');
    await expect(cell.locator('iframe').getAttribute('sandbox')).resolves.not.toMatch(/scripts/);
    const html = await saved(page, cell.getByRole('button', { name: 'Save as a page' }));
    expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    const alone = await page.context().newPage();
    await alone.setContent(html);
    await expect(alone.locator('main').textContent()).resolves.toBe(await inside.locator('main').textContent());
    expect(await violations(new AxeBuilder({ page: alone }))).toEqual([]);
    for (const format of ['A4', 'Letter'] as const)
      expect((await alone.pdf({ format, preferCSSPageSize: false })).subarray(0, 5).toString()).toBe('%PDF-');
    await alone.setViewportSize({ width: 400, height: 900 });
    // On a narrow screen a time that is broken within would be read as another.
    const lines = await alone.evaluate(`[...document.querySelectorAll('td')]
      .filter((cell) => /^[\\d:]{8}$/.test(cell.textContent))
      .map((cell) => {
        const range = document.createRange();
        range.selectNodeContents(cell);
        return range.getClientRects().length;
      })`);
    expect([...new Set(lines as number[])]).toEqual([1]);
    await alone.close();
  });

  it('goes into the report of the sheet, without its form', async () => {
    const { page } = open;
    const html = await saved(page, page.getByRole('button', { name: 'Report' }));
    const report = await page.context().newPage();
    await report.setContent(html);
    await expect(report.locator('.cell-record').textContent()).resolves.toMatch(/fire watch.*depot staff/);
    await expect(report.locator('.cell-record').locator('input, iframe, button, textarea').count()).resolves.toBe(0);
    await report.close();
  });

  it.each([
    ['light', 1280],
    ['light', 400],
    ['dark', 1280],
  ] as const)('axe finds nothing in a full record: %s, %i px wide', async (colorScheme, width) => {
    const { page, cell } = open;
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    await eventually(() => page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    await eventually(() => cell.locator('iframe').contentFrame().locator('.beam').count()).toBe(5);
    // Nothing runs in the frame, axe neither: the page that it shows is looked at alone.
    await expect(cell.locator('iframe').getAttribute('title')).resolves.toMatch(/\S/);
    expect(await violations(new AxeBuilder({ page }).include('.cell-record').exclude('iframe'))).toEqual([]);
  });

  it('is there at the next visit, and travels in a saved sheet', async () => {
    const { page, cell } = open;
    await cell.getByLabel('Day of the work').fill('2027-01-21');
    await page.locator('.saved', { hasText: 'saved in this browser' }).waitFor();
    await page.reload();
    await eventually(() => cell.getByLabel('Day of the work').inputValue()).toBe('2027-01-21');
    await eventually(() => cell.locator('.record-front').textContent()).toMatch(/shift leader of the depot/);
    const file = await saved(page, page.locator('.toolbar').getByRole('button', { name: 'Save', exact: true }));
    const other = await here.open();
    await other.page.locator('.cell-log').waitFor();
    await other.page
      .getByLabel('A saved worksheet')
      .setInputFiles([{ name: 'day.json', mimeType: 'application/json', buffer: Buffer.from(file) }]);
    await eventually(() => other.page.locator('.record-front').textContent()).toMatch(/shift leader of the depot/);
    await other.close();
  });
});

it('a record shows hostile text as text: on the sheet, in the frame, in the page', async () => {
  const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
  const names = [evil, '__proto__'] as const;
  const open = await here.open();
  const { page } = open;
  await page.locator('.cell-log').waitFor();
  await dropFiles(page, [
    { name: 'hall.csv', text: smallLog(names) },
    { name: 'hall.json', text: smallSite(names, evil) },
  ]);
  await page.locator('table.beams', { hasText: '__proto__' }).waitFor();
  const cell = await addRecord(page);
  await cell.getByLabel('Remarks, a line each').fill(evil);
  await cell.getByRole('button', { name: 'Add a person', exact: true }).click();
  await cell.getByLabel('name', { exact: true }).fill(evil);
  await eventually(() => cell.locator('.record-front').textContent()).toMatch(/licence<img src=x|<img src=x/);
  const inside = cell.locator('iframe').contentFrame();
  await eventually(() => inside.locator('body').textContent()).toContain('<img src=x');
  for (const place of [cell.locator('.record-front'), inside.locator('body')])
    await expect(place.locator('img, script').count()).resolves.toBe(0);
  const html = await saved(page, cell.getByRole('button', { name: 'Save as a page' }));
  expect(html).not.toMatch(/<img|<script/);
  await expect(page.title()).resolves.toBe('beamkeep');
  await open.close();
});
