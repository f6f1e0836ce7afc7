import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Desk, desk, dropFiles, eventually, type OpenNotebook, openSmall } from './notebook.js';
import { smallLog, smallSite } from './smallLog.js';

/* An answer of the worker stands under its own question only: while it is waited for, and where none comes. */

let here: Desk;
let open: OpenNotebook;
beforeAll(async () => {
  here = await desk();
  open = await openSmall(here);
  await open.page.evaluate(askedThroughUs);
});
afterEach(async () => {
  await open.page.emulateMedia({ media: 'screen' });
  await open.page.evaluate("spoil = ''; letGo()");
});
afterAll(() => here?.close());

/** Run in the page: questions of a name are kept until they are let go, or asked under a name that is none. */
const askedThroughUs = `{
  const post = Worker.prototype.postMessage;
  const kept = [];
  globalThis.keep = '';
  globalThis.spoil = '';
  globalThis.letGo = () => {
    keep = '';
    for (const go of kept.splice(0)) go();
  };
  Worker.prototype.postMessage = function (message, ...rest) {
    const question = message.path?.[0];
    const sent = question === spoil ? { ...message, path: ['none of its questions'] } : message;
    if (question === keep) kept.push(() => post.call(this, sent, ...rest));
    else post.call(this, sent, ...rest);
  };
}`;

const fold = (page: Page) => page.locator('.cell-fold');
const choose = (page: Page, cell: string, name: string) =>
  page.locator(cell).getByRole('radio', { name, exact: true }).check({ force: true });

describe('while an answer is waited for', () => {
  it('a fold of another beam is not shown under the name of the new one; on paper it says that it is not drawn', async () => {
    const { page } = open;
    await page.evaluate("keep = 'dayFold'");
    await choose(page, '.cell-fold', 'south');
    const plot = fold(page).locator('.plot');
    await eventually(() => plot.getAttribute('aria-busy')).toBe('true');
    await expect(plot.getAttribute('aria-label')).resolves.toMatch(/^Beam south/);
    await expect(plot.locator('.main-svg:visible').count()).resolves.toBe(0);
    await fold(page).getByText('On its way …').waitFor();
    const onPaper = fold(page).getByText('Not drawn yet.');
    await expect(onPaper.isVisible()).resolves.toBe(false);
    await page.emulateMedia({ media: 'print' });
    await expect(onPaper.isVisible()).resolves.toBe(true);
    await expect(fold(page).getByText('On its way …').isVisible()).resolves.toBe(false);
    // Paper does not wait for what is shown after a moment.
    await expect(
      page.evaluate("getComputedStyle(document.querySelector('.cell-fold .coming.on-paper')).animationName"),
    ).resolves.toBe('none');
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate('letGo()');
    await eventually(() => plot.locator('.main-svg:visible').count()).toBeGreaterThan(0);
    await expect(fold(page).locator('.coming').count()).resolves.toBe(0);
  });

  it('a line stays on the scale that it was asked for, and says that the other is on its way', async () => {
    const { page } = open;
    const lane = page.locator('.lane').first();
    const value = async () => {
      await lane.locator('.plot').hover({ position: { x: 400, y: 100 } });
      return (await lane.locator('.lane-value').textContent())?.match(/[%dB]+$/)?.[0];
    };
    await eventually(value).toBe('%');
    await page.evaluate("keep = 'level'");
    await choose(page, '.cell-signal', 'loss dB');
    await lane.getByText('The line asked for is on its way …').waitFor();
    await expect(lane.locator('.ytitle').textContent()).resolves.toMatch(/%/);
    await expect(value()).resolves.toBe('%');
    await page.evaluate('letGo()');
    await eventually(() => lane.locator('.ytitle').textContent()).toMatch(/dB/);
    await eventually(value).toBe('dB');
    await expect(lane.locator('.coming').count()).resolves.toBe(0);
  });
});

describe('where no answer comes', () => {
  it('a plot says that it could not be drawn, and is drawn once it can be', async () => {
    const { page } = open;
    await page.evaluate("spoil = 'dayFold'");
    await choose(page, '.cell-fold', 'north');
    await fold(page).getByText('This could not be drawn.').waitFor();
    await expect(fold(page).locator('.plot .main-svg:visible').count()).resolves.toBe(0);
    await page.evaluate("spoil = ''");
    await choose(page, '.cell-fold', 'south');
    await eventually(() => fold(page).locator('.plot .main-svg:visible').count()).toBeGreaterThan(0);
  });

  it('a line stays, and says that the one asked for could not be made', async () => {
    const { page } = open;
    const lane = page.locator('.lane').first();
    await choose(page, '.cell-signal', 'loss dB');
    await eventually(() => lane.locator('.ytitle').textContent()).toMatch(/dB/);
    await page.evaluate("spoil = 'level'");
    await choose(page, '.cell-signal', 'level %');
    await lane.getByText('The line asked for could not be made.').waitFor();
    await expect(lane.locator('.ytitle').textContent()).resolves.toMatch(/dB/);
  });

  it('the margin of a beam says that it could not be drawn, and tells no figure of the log before', async () => {
    const { page } = open;
    const margin = page.locator('.margin').first();
    await expect(margin.textContent()).resolves.toMatch(/At its daily low/);
    await page.evaluate("spoil = 'dailyLevels'");
    await dropFiles(page, [
      { name: 'again.csv', text: smallLog() },
      { name: 'hall.json', text: smallSite() },
    ]);
    await page.locator('.cell-log', { hasText: 'again.csv' }).waitFor();
    await margin.getByText('This could not be drawn.').waitFor();
    await expect(margin.textContent()).resolves.not.toMatch(/At its daily low/);
  });
});
