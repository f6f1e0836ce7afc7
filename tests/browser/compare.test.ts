import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  addCell,
  type Desk,
  desk,
  dropFiles,
  eventually,
  type OpenNotebook,
  openSmall,
  violations,
} from './notebook.js';
import { smallLog, smallSite } from './smallLog.js';

let here: Desk;
let open: OpenNotebook;
let cell: Locator;
beforeAll(async () => {
  here = await desk();
  open = await openSmall(here);
  cell = open.page.locator('.cell-compare');
});
afterAll(() => here?.close());

/** Twelve days of July: `north` has been re-aimed, both swing half a percent by day. */
function logAfter(names: readonly [string, string] = ['north', 'south']): string {
  const start = Date.UTC(2027, 6, 1);
  const lines = Array.from({ length: 12 * 1440 }, (_, minute) => {
    const sway = Math.max(0, Math.sin((((minute % 1440) - 480) / 720) * Math.PI)) / 2;
    const dither = ((minute * 7919) % 13) / 20 - 0.3;
    return `${new Date(start + minute * 60_000).toISOString()},${(98 - sway + dither).toFixed(2)},${(99 - sway + dither).toFixed(2)}`;
  });
  return `time,${names.map((name) => `"${name.replace(/"/g, '""')}"`).join(',')}\n${lines.join('\n')}\n`;
}

async function dropAfter(page: Page, names?: readonly [string, string]): Promise<void> {
  const files = { 'july.csv': logAfter(names), 'july.json': smallSite(names) };
  await page
    .getByLabel('Log files and site file')
    .nth(1)
    .setInputFiles(
      Object.entries(files).map(([name, text]) => ({
        name,
        mimeType: 'application/octet-stream',
        buffer: Buffer.from(text),
      })),
    );
}

describe('before and after a visit', () => {
  it('asks for a second log', async () => {
    await addCell(open.page, 'two logs compared, before and after a visit');
    await eventually(() => cell.textContent()).toMatch(/there are not two above it. Add a second log cell above/);
  });

  it('takes the two nearest logs above and says what is won, what is left and what was found', async () => {
    const { page } = open;
    await cell.getByRole('button', { name: 'remove' }).click();
    await addCell(page, 'a log and its site');
    await dropAfter(page);
    await addCell(page, 'two logs compared, before and after a visit');
    await eventually(() => cell.locator('.said').textContent()).toMatch(
      /Beam north, the last 6 days before, since its last step, against the first 12 days after: it loses 0\.\d+ dB on a usual day, before it was 1\.\d dB: 1\.\d dB are won/,
    );
    await cell.locator('.main-svg').first().waitFor();
    await expect(cell.locator('tbody').nth(1).textContent()).resolves.toMatch(/northKnocked out of aim10not seen/);
    await cell.getByText('Each day as a table').click();
    await eventually(() => cell.locator('details tbody tr').count()).toBe(18);
    expect(
      await violations(new AxeBuilder({ page: open.page }).include('.cell-compare').exclude('.plot > div')),
    ).toEqual([]);
  });

  it('changes beams and sides by keys, with one step of undo each', async () => {
    const { page } = open;
    await cell.getByLabel('south', { exact: true }).check();
    await eventually(() => cell.locator('.said').textContent()).toMatch(/^Beam south/);
    await cell.getByLabel('Log before').selectOption({ index: 1 });
    await eventually(() => cell.textContent()).toMatch(/Both are the same log/);
    await cell.getByLabel('Log after').selectOption({ index: 0 });
    await eventually(() => cell.textContent()).toMatch(/are they the right way round\?/);
    for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => cell.locator('.said').textContent()).toMatch(/^Beam north.*are won/);
    await cell.getByLabel('Days of either').fill('0');
    await eventually(() => cell.locator('.trouble').textContent()).toMatch(/Days 0: give a whole number/);
    await page.getByRole('button', { name: 'Undo' }).click();
  });

  it('comes back with both logs at the next visit', async () => {
    const { page } = open;
    await page.locator('.saved', { hasText: 'saved in this browser' }).waitFor();
    await page.reload();
    await eventually(() => cell.locator('.said').textContent()).toMatch(/^Beam north.*are won/);
  });

  it('hostile names are text in it', async () => {
    const names = ['<img src=x onerror="document.title=1">', '<b>south'] as const;
    const { page } = open;
    await dropFiles(page, [
      { name: 'hall.csv', text: smallLog(names) },
      { name: 'hall.json', text: smallSite(names) },
    ]);
    await dropAfter(page, names);
    await eventually(() => cell.locator('.said').textContent()).toMatch(/^Beam <img src=x onerror/);
    await expect(page.locator('main img, main b b').count()).resolves.toBe(0);
    await expect(page.title()).resolves.toBe('beamkeep');
  });
});
