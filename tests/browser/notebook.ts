import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type AxeBuilder from '@axe-core/playwright';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';
import { type Served, serveFolder } from './serveFolder.js';
import { smallLog, smallSite } from './smallLog.js';

/*
 * The built notebook in a real browser, for one test file. The browser stands in another time zone than any site of
 * the tests: what is drawn or told in the reader's zone instead of the site's shows at once.
 */

const built = fileURLToPath(new URL('../../notebook/dist/', import.meta.url));

/** A notebook open in a fresh browser profile. */
export interface OpenNotebook {
  readonly page: Page;
  /** Every address that was asked for. */
  readonly requests: readonly string[];
  /** What the console said, worst first to be looked at: errors and exceptions. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

/** A browser and a server that several notebooks of a test file share. */
export interface Desk {
  readonly url: string;
  /** Opens the notebook, as for someone who has been here before unless the first steps are asked for. */
  open(options?: BrowserContextOptions & { readonly firstSteps?: boolean }): Promise<OpenNotebook>;
  close(): Promise<void>;
}

/** Starts the browser and the server. */
export async function desk(): Promise<Desk> {
  if (!existsSync(`${built}index.html`)) throw new Error('the notebook is not built: run "npm run build" first');
  const served: Served = await serveFolder(built, '/some/where/else/');
  const browser: Browser = await chromium.launch({
    executablePath: inject('chromium'),
    args: ['--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run'],
  });
  return {
    url: served.url,
    async open({ firstSteps = false, ...options } = {}) {
      const context = await browser.newContext({
        timezoneId: 'America/New_York',
        locale: 'en-GB',
        colorScheme: 'light',
        viewport: { width: 1280, height: 900 },
        ...options,
      });
      context.setDefaultTimeout(60_000);
      if (!firstSteps) await context.addInitScript("localStorage.setItem('beamkeep-guide', 'seen')");
      const page = await context.newPage();
      const requests: string[] = [];
      const errors: string[] = [];
      context.on('request', (request) => requests.push(request.url()));
      page.on('console', (message) => {
        if (message.type() === 'error') errors.push(message.text());
      });
      page.on('pageerror', (error) => errors.push(String(error.stack ?? error)));
      await page.goto(served.url);
      return { page, requests, errors, close: () => context.close() };
    },
    async close() {
      await browser.close();
      await served.close();
    },
  };
}

/** Looks again and again until what it sees is as expected; a busy machine gets time for it. */
export const eventually = <T>(look: () => T) => expect.poll(look, { timeout: 60_000 });

/** What axe finds, and the first place of each. */
export async function violations(axe: AxeBuilder): Promise<(string | undefined)[][]> {
  const found = await axe.analyze();
  return found.violations.map(({ id, nodes }) => [id, nodes[0]?.html]);
}

/** Waits until the log is read and every plot is drawn. */
export async function settled(page: Page): Promise<void> {
  await page.locator('table.beams').first().waitFor();
  await page.locator('.finding').first().waitFor();
  await page.locator('main[aria-busy="false"]').waitFor();
  await plotsDrawn(page);
}

/** Waits until every plot on the page holds its picture. */
export async function plotsDrawn(page: Page): Promise<void> {
  await page.locator('.plot').first().waitFor();
  await page.locator('.plot > div:not(:has(.main-svg))').first().waitFor({ state: 'detached' });
}

/** Opens a notebook on the small log. */
export async function openSmall(here: Desk, options: BrowserContextOptions = {}): Promise<OpenNotebook> {
  const open = await here.open(options);
  await open.page.locator('.cell-log').waitFor();
  await dropFiles(open.page, [
    { name: 'hall.csv', text: smallLog() },
    { name: 'hall.json', text: smallSite() },
  ]);
  await open.page.locator('table.beams', { hasText: 'north' }).waitFor();
  await settled(open.page);
  return open;
}

/** Adds a cell at the end, by the words of the menu. */
export async function addCell(page: Page, about: string): Promise<void> {
  await page.locator('.add-button').last().click();
  await page.locator('.menu:popover-open').getByText(about, { exact: true }).press('Enter');
}

/** The words of the menu for every kind of cell. */
export async function everyKind(page: Page): Promise<string[]> {
  await page.locator('.add-button').last().click();
  const words = await page.locator('.menu:popover-open button').allTextContents();
  await page.keyboard.press('Escape');
  return words;
}

/** Gives files to the log cell. */
export async function dropFiles(page: Page, files: readonly { name: string; text: string | Buffer }[]): Promise<void> {
  await page
    .getByLabel('Log files and site file')
    .first()
    .setInputFiles(
      files.map(({ name, text }) => ({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) })),
    );
}
