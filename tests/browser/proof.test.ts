import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dayFile, give, giveProof } from './commissioningDay.js';
import { addCell, type Desk, desk, eventually, type OpenNotebook, plotsDrawn, violations } from './notebook.js';
import { smallSite } from './smallLog.js';

let here: Desk;
beforeAll(async () => {
  here = await desk();
});
afterAll(() => here?.close());

type Opened = OpenNotebook & { readonly cell: Locator };

/** A notebook with a proof cell at its end, on the demo's site or on one without a log. */
async function openProof({ site }: { readonly site?: string } = {}): Promise<Opened> {
  const open = await here.open();
  await open.page.locator('.cell-log').waitFor();
  if (site !== undefined) {
    await addCell(open.page, 'a log and its site');
    await open.page
      .getByLabel('Log files and site file')
      .last()
      .setInputFiles([{ name: 'hall.json', mimeType: 'application/json', buffer: Buffer.from(site) }]);
  }
  await addCell(open.page, 'a proof, step by step');
  const cell = open.page.locator('.cell-proof').last();
  await cell.locator('.steps').waitFor();
  return { ...open, cell };
}

describe('the proof cell', () => {
  it('prints a sheet from the site alone: no log is needed', async () => {
    const { cell, close } = await openProof({ site: smallSite() });
    await expect(cell.locator('.minded-first').textContent()).resolves.toMatch(
      /out of service.*tell those who monitor/,
    );
    await expect(cell.locator('.step').count()).resolves.toBe(9);
    await expect(cell.locator('.step').nth(2).textContent()).resolves.toMatch(/Must show: fire 10 to 15 s/);
    await expect(cell.getByRole('group', { name: 'Beam' }).getByRole('radio').count()).resolves.toBe(2);
    await close();
  });

  it('follows undo, comes back at the next visit, and travels in a saved sheet', async () => {
    const { page, cell, close } = await openProof();
    await give(cell, 'log of the test', 'proof-b1.csv', dayFile('proof-b1.csv'));
    await eventually(() => cell.locator('.answer').textContent()).toMatch(/not shown by the log: .*reset/);
    const reset = cell.getByLabel(/^Done at/).first();
    await reset.fill('2027-01-20T11:33:20');
    await eventually(() => cell.locator('.step').nth(4).textContent()).toMatch(/pass/);
    await page.locator('.toolbar').getByRole('button', { name: 'Undo' }).click();
    await eventually(() => reset.inputValue()).toBe('');
    await page.locator('.toolbar').getByRole('button', { name: 'Redo' }).click();
    await eventually(() => reset.inputValue()).toBe('2027-01-20T11:33:20');
    await page.locator('.saved', { hasText: 'saved in this browser' }).waitFor();
    await page.reload();
    await eventually(() =>
      cell
        .getByLabel(/^Done at/)
        .first()
        .inputValue(),
    ).toBe('2027-01-20T11:33:20');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const buffer = await readFile(await (await download).path());
    await close();
    const other = await here.open();
    await other.page.locator('.cell-log').waitFor();
    await other.page
      .getByLabel('A saved worksheet')
      .setInputFiles([{ name: 'day.json', mimeType: 'application/json', buffer }]);
    await eventually(() => other.page.locator('.cell-proof .step').nth(4).textContent()).toMatch(/pass/);
    await other.close();
  });
});

describe('what a proof cell is given', () => {
  let open: Opened;
  beforeAll(async () => {
    open = await openProof();
  });
  afterAll(() => open?.close());

  it('refuses what cannot be used in words, and keeps the sheet in sight', async () => {
    const { cell } = open;
    await give(cell, 'log of the test', 'poem.csv', 'roses,violets\nred,blue\n');
    await eventually(() => cell.locator('.trouble').textContent()).toMatch(/poem\.csv/);
    await expect(cell.locator('.step').count()).resolves.toBe(9);
    await give(
      cell,
      'proof sheet',
      'odd.json',
      '{"format": "beamkeep-proof-sheet/1", "beam": "B1", "steps": [{"do": "hope"}]}',
    );
    await eventually(() => cell.locator('.trouble').first().textContent()).toMatch(/odd\.json.*steps\[0\]/);
  });

  it('shows hostile text as text', async () => {
    const evil = '<img src=x onerror="document.title=1">';
    const { page, cell } = open;
    await give(cell, `log of the test`, `${evil}.csv`, `time,b1\n2027-01-20T11:30:00Z,${evil}\n`);
    await give(
      cell,
      'proof sheet',
      'evil.json',
      JSON.stringify({
        format: 'beamkeep-proof-sheet/1',
        beam: evil,
        steps: [{ do: 'reset', note: evil, time: evil }],
      }),
    );
    await eventually(() => cell.textContent()).toContain('<img src=x');
    await expect(cell.locator('img').count()).resolves.toBe(0);
    await expect(page.title()).resolves.toBe('beamkeep');
  });
});

describe('a judged proof', () => {
  let open: Opened;
  beforeAll(async () => {
    open = await openProof();
    await giveProof(open.cell, 'b2');
  });
  afterAll(() => open?.close());

  it('finds the failing step, and says why in words', async () => {
    const { page, cell, errors } = open;
    await eventually(() => cell.locator('.answer').textContent()).toMatch(
      /^Beam B2: fail\. 7 of 8 steps passed; failed: 6 \(cover at once\)\. Judged by the received signal and by the panel/,
    );
    const sixth = cell.locator('.step').nth(5);
    await expect(sixth.locator('.severity').textContent()).resolves.toBe('FAIL');
    await expect(sixth.textContent()).resolves.toMatch(/It took 3\.5\ss to cover the beam/);
    await expect(cell.locator('.step').first().textContent()).resolves.toMatch(/at11:50:40 to 11:51:21took19 %/);
    await plotsDrawn(page);
    const plot = cell.locator('.plot');
    await expect(plot.getAttribute('aria-label')).resolves.toMatch(/failed: 6 \(cover at once\)/);
    await expect(plot.locator('.annotation-text', { hasText: '6 FAIL' }).count()).resolves.toBe(1);
    expect(errors.filter((error) => !/inline style.*Content Security Policy/.test(error))).toEqual([]);
  });

  it.each([
    ['light', 1280],
    ['light', 400],
    ['dark', 1280],
  ] as const)('axe finds nothing in a judged proof: %s, %i px wide', async (colorScheme, width) => {
    const { page, cell } = open;
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    await eventually(() => page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    await expect(cell.locator('.step-failed').count()).resolves.toBe(1);
    await plotsDrawn(page);
    expect(await violations(new AxeBuilder({ page }).include('.cell-proof').exclude('.plot > div'))).toEqual([]);
  });
});
