import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  addCell,
  type Desk,
  desk,
  eventually,
  everyKind,
  openSmall,
  plotsDrawn,
  settled,
  violations,
} from './notebook.js';

/**
 * What axe finds on a page. What stands inside a picture (role img) is hidden from readers. Nothing runs in the frame of a
 * record, axe neither: its page is looked at alone.
 */
const seen = (page: Page) => violations(new AxeBuilder({ page }).exclude('.plot > div').exclude('iframe'));

let here: Desk;
beforeAll(async () => {
  here = await desk();
});
afterAll(() => here?.close());

/** Every sentence that stands for a plot, by a reader who does not see it. */
const sentences = async (page: Page): Promise<string[]> =>
  Promise.all((await page.locator('.plot').all()).map(async (plot) => (await plot.getAttribute('aria-label')) ?? ''));

const sideways = (page: Page) => eventually(() => page.evaluate('document.documentElement.scrollWidth'));

describe('for everyone', () => {
  it('axe finds nothing in the demo: opened in the dark, then light, then narrow', async () => {
    const { page, close } = await here.open({ colorScheme: 'dark' });
    await settled(page);
    expect(await seen(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await seen(page)).toEqual([]);
    await page.setViewportSize({ width: 400, height: 900 });
    await sideways(page).toBeLessThanOrEqual(400);
    expect(await seen(page)).toEqual([]);
    await close();
  });

  it('axe finds nothing in any kind of cell, light or dark, every plot has a sentence, and none is too wide', async () => {
    const { page, close } = await openSmall(here);
    const kinds = await everyKind(page);
    expect(kinds.length).toBeGreaterThan(10);
    for (const about of kinds) await addCell(page, about);
    await plotsDrawn(page);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await seen(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await seen(page)).toEqual([]);
    expect((await sentences(page)).filter(({ length }) => length <= 20)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 900 });
    await sideways(page).toBeLessThanOrEqual(320);
    await close();
  });

  it('moves through the log by keys alone', async () => {
    const { page, close } = await openSmall(here);
    const where = page.locator('.where').first();
    const whole = await where.textContent();
    await page.locator('.lanes').first().focus();
    await page.keyboard.press('n');
    await eventually(() => page.locator('.chosen').textContent()).toMatch(/^1 /);
    await page.keyboard.press('+');
    await page.keyboard.press('ArrowRight');
    await eventually(() => where.textContent()).not.toBe(whole);
    await page.keyboard.press('0');
    await eventually(() => where.textContent()).toBe(whole);
    await close();
  });

  it('a narrow page does not scroll sideways, and leads to where the numbers come from, on a page for everyone', async () => {
    const { page, requests, close } = await openSmall(here, { viewport: { width: 400, height: 900 } });
    await sideways(page).toBeLessThanOrEqual(400);
    const [numbers] = await Promise.all([
      page.waitForEvent('popup'),
      page.getByRole('link', { name: 'Where the numbers come from' }).click(),
    ]);
    expect(await numbers.getByRole('heading', { level: 1 }).textContent()).toBe('Where the numbers come from');
    expect(await numbers.getByRole('row', { name: 'halfPowerLoss' }).textContent()).toContain('10 log10(2)');
    for (const colorScheme of ['light', 'dark'] as const) {
      await numbers.emulateMedia({ colorScheme });
      expect(await seen(numbers)).toEqual([]);
    }
    expect(await numbers.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(400);
    expect(requests.filter((url) => !url.startsWith(here.url))).toEqual([]);
    await close();
  });
});
