import AxeBuilder from '@axe-core/playwright';
import { recordPage } from 'beamkeep/commissioning';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { demoRecord } from './demo.js';

/* The record as a browser shows and prints it. */

let browser: Browser;
let html = '';
beforeAll(async () => {
  [browser, html] = await Promise.all([
    chromium.launch({ executablePath: inject('chromium') }),
    demoRecord().then(recordPage),
  ]);
});
afterAll(() => browser?.close());

/** The page opened as a file would be, with everything that it asks for or complains about. */
async function opened(): Promise<{ page: Page; asked: string[]; said: string[] }> {
  const context = await browser.newContext({ viewport: { width: 900, height: 1200 } });
  const page = await context.newPage();
  const asked: string[] = [];
  const said: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  await page.setContent(html, { waitUntil: 'load' });
  return { page, asked, said };
}

/** Number of pages of a PDF, by its own count. */
const pagesOf = (pdf: Buffer): number =>
  Math.max(
    ...[...pdf.toString('latin1').matchAll(/\/Type\s*\/Pages[^>]*\/Count (\d+)/g)].map(([, count]) => Number(count)),
  );

describe('the printed record', () => {
  it('asks for nothing and complains of nothing', async () => {
    const { page, asked, said } = await opened();
    expect({ asked, said }).toEqual({ asked: [], said: [] });
    await page.context().close();
  });
  it.each(['A4', 'Letter'] as const)('prints on %s, nothing wider than the sheet', async (format) => {
    const { page } = await opened();
    const pdf = await page.pdf({ format, preferCSSPageSize: false });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    const count = pagesOf(pdf);
    expect(count).toBeGreaterThan(8);
    expect(count).toBeLessThan(24);
    await page.emulateMedia({ media: 'print' });
    // Width between the margins of 14 mm, in CSS pixels.
    const room = format === 'A4' ? ((210 - 28) / 25.4) * 96 : ((215.9 - 28) / 25.4) * 96;
    await page.setViewportSize({ width: Math.floor(room), height: 1000 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(Math.floor(room));
    await page.context().close();
  });
  it('is readable without eyes: axe finds nothing, every drawing says what it shows', async () => {
    const { page } = await opened();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    const labels = await page.locator('svg').evaluateAll((all) => all.map((svg) => svg.getAttribute('aria-label')));
    expect(labels.length).toBe(11);
    expect(labels.every((label) => label !== null && label.length > 20)).toBe(true);
    await page.context().close();
  });
  it('a narrow screen shows it without scrolling sideways', async () => {
    const { page } = await opened();
    await page.setViewportSize({ width: 400, height: 900 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(400);
    await page.context().close();
  });
});
