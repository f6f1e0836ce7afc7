import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCell, type Desk, desk, type OpenNotebook, plotsDrawn, settled } from './notebook.js';

/* What leaves the screen says what the screen says: the fields are left out there, what was typed into them is not. */

let here: Desk;
let open: OpenNotebook;
let report: Page;
beforeAll(async () => {
  here = await desk();
  open = await here.open({ colorScheme: 'dark' });
  const { page } = open;
  await settled(page);
  await addCell(page, 'a layout of beams by a rule set');
  await addCell(page, 'a lesson with sliders');
  await addCell(page, 'a note of your own');
  await page.getByLabel('Note in Markdown').fill('the *bracket* is bent');
  await page.locator('.cell-note em').waitFor({ state: 'attached' });
  await addCell(page, 'the commissioning record');
  await page.getByRole('button', { name: 'invented commissioning day' }).click();
  await page.locator('.record-front', { hasText: 'Inês Moreira' }).waitFor();
  await page.locator('.cell-findings').getByLabel('watch and act').check({ force: true });
  await plotsDrawn(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Report' }).click();
  const html = await readFile(await (await download).path(), 'utf8');
  report = await page.context().newPage();
  await report.setContent(html);
  await page.emulateMedia({ media: 'print' });
});
afterAll(() => here?.close());

/** What was asked, as each of two ways out of the screen tells it. */
const asked = (kind: string): Promise<(string | null)[]> =>
  Promise.all(
    [open.page, report].map((page) =>
      page.locator(`.cell-${kind} .asked`).filter({ visible: true }).first().textContent(),
    ),
  );
const both = (words: string): string[] => [words, words];
/** How many of these are seen. */
const seenOn = (place: Locator): Promise<number> =>
  place.evaluateAll((all) => all.filter((one) => one.checkVisibility()).length);

describe('on paper and in the report', () => {
  it('a cell tells what it was asked, for its fields are not there', async () => {
    await expect(asked('fold')).resolves.toEqual(both('Beam: B1.'));
    await expect(asked('units')).resolves.toEqual(both('Smoke crossed: 100 m.'));
    await expect(asked('findings')).resolves.toEqual(both('Listed: watch and act.'));
    await expect(asked('aim')).resolves.toEqual(both('Aim scan: scan-b1.csv.'));
    await expect(asked('covered')).resolves.toEqual(both('Log of the covered test: covered-b1.csv.'));
    for (const told of await asked('proof')) expect(told).toMatch(/clock ahead of the logger’s \[s\]: 140;/);
    for (const told of await asked('lesson')) expect(told).toMatch(/short optical path: 20 m/);
    for (const told of await asked('plan'))
      expect(told).toMatch(
        /^Length, along the beams: 60 m; width: 40 m; height: 12 m; roof: flat; rule set: .+\(.+\)\.$/,
      );
  });

  it('every bar of a lane has its name on paper', async () => {
    const { page } = open;
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    const names = await page.locator('.cell-signal .plot svg text').filter({ visible: true }).allTextContents();
    await page.evaluate("dispatchEvent(new Event('afterprint'))");
    const findings = await page.locator('.cell-log td:last-child').allTextContents();
    const numbers = names.flatMap((name) => /^(\d+) [a-z]/.exec(name)?.[1] ?? []).map(Number);
    const all = findings.reduce((sum, count) => sum + Number(count), 0);
    expect(all).toBeGreaterThan(20);
    expect(numbers.sort((a, b) => a - b)).toEqual(Array.from({ length: all }, (_, at) => at + 1));
  });

  it('the panel’s list keeps its times', async () => {
    for (const page of [open.page, report])
      await expect(page.locator('.events tbody th').first().textContent()).resolves.toBe(
        '13\u00a0Mar\u00a02027, 07:54',
      );
  });

  it('entries of the panel’s list that say the same are one row, with the time of each', async () => {
    for (const page of [open.page, report]) {
      const rows = await page.locator('.events tbody tr').filter({ visible: true }).allTextContents();
      expect(rows).toHaveLength(8);
      const [folded = ''] = rows.filter((row) => row.includes('31 times'));
      expect(folded).toMatch(/^16\sMar\s2027, 07:50 to 18\sApr\s2027, 08:48B4.*level 12 to 17.8 % above clean air/);
      expect(folded.split('All times:')[1]?.split(';')).toHaveLength(31);
    }
  });

  it('cautions stand beside a test that has been made', async () => {
    for (const page of [open.page, report])
      for (const kind of ['aim', 'covered'])
        await expect(
          page
            .locator(`.cell-${kind}`)
            .first()
            .getByText('Heads and reflectors hang high')
            .filter({ visible: true })
            .count(),
        ).resolves.toBe(1);
  });

  it('no field and no button is there, and a note that is being written is', async () => {
    const controls = 'main :is(button:not(.plain), input, select, textarea, summary)';
    for (const page of [open.page, report]) {
      await expect(seenOn(page.locator(controls))).resolves.toBe(0);
      await expect(page.locator('.cell-note em').textContent()).resolves.toBe('bracket');
    }
  });

  it('no heading can be left behind at the foot of a page: what stands under it is no row of a grid', async () => {
    const { page } = open;
    const bodies = "document.querySelectorAll('.cell-body, .beam, .record-front, .margins')";
    const displays = await page.evaluate(`[...new Set([...${bodies}].map((one) => getComputedStyle(one).display))]`);
    expect(displays).toEqual(['block']);
  });

  it('names at the lines of an aim scan do not cover each other', async () => {
    const { page } = open;
    await page.emulateMedia({ media: 'screen' });
    const cell = page.locator('.cell-aim').nth(3);
    const [peak, left] = await Promise.all(
      ['peak', 'left here'].map((name) => cell.locator('.annotation-text', { hasText: name }).boundingBox()),
    );
    expect(peak && left && peak.x + peak.width <= left.x).toBe(true);
  });
});
