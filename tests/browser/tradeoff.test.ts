import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCell, type Desk, desk, eventually, type OpenNotebook, openSmall, violations } from './notebook.js';

let here: Desk;
let open: OpenNotebook;
let cell: Locator;
beforeAll(async () => {
  here = await desk();
  open = await openSmall(here);
  await addCell(open.page, 'threshold and delay: time to alarm against nuisance');
  cell = open.page.locator('.cell-tradeoff');
  await cell.locator('.main-svg').nth(1).waitFor();
});
afterAll(() => here?.close());

describe('what each setting costs', () => {
  it('says both costs of the setting of the site, with limits, clauses and caution', async () => {
    await eventually(() => cell.locator('.said').textContent()).toMatch(
      /As it is set, 35 % held for 10 s: t-squared, medium, wood: alarm after .* a year \(0 to /,
    );
    await expect(cell.locator('.limits').textContent()).resolves.toMatch(/EN 54-12:2002/);
    await expect(cell.locator('.trouble').textContent()).resolves.toMatch(/whether one of them was a fire.*No promise/);
    await expect(cell.locator('.key').last().textContent()).resolves.toMatch(/Left out: /);
  });

  it('tries another setting by keys, undoes it in one step, and says which limit it breaks', async () => {
    const { page } = open;
    await cell.getByLabel('Tried delay').focus();
    await page.keyboard.press('End');
    await eventually(() => cell.locator('.said').textContent()).toMatch(
      /Tried, 35 % held for 120 s: .*35 % and 120 s lie outside: a sudden loss of 6 dB must alarm within 30 s \(EN 54-12/,
    );
    await expect(cell.locator('.costs tbody tr').nth(1).textContent()).resolves.toMatch(/^tried35 %120 s.*outside e$/);
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => cell.locator('.said').textContent()).not.toMatch(/Tried/);
  });

  it('follows hall and fires without another pass, and refuses a hall that cannot be in words', async () => {
    const time = async (): Promise<string> => (await cell.locator('.costs tbody td').nth(2).textContent()) ?? '';
    const before = await time();
    await cell.getByLabel('Ceiling above the fuel').fill('24');
    await eventually(time).not.toBe(before);
    await cell.getByLabel('smouldering').check();
    await eventually(() => cell.locator('.costs thead').textContent()).toMatch(/smouldering/);
    await cell.getByLabel('Floor area').fill('-4');
    await eventually(() => cell.locator('.trouble').textContent()).toMatch(/floor area -4 m² must be more than 0/);
    await cell.getByLabel('Floor area').fill('900');
    await cell.locator('.costs').waitFor();
  });

  it('has every number of its plots in a table, and hands them out as JSON', async () => {
    await cell.getByText('Every setting as a table').click();
    await eventually(() => cell.locator('details tbody tr').count()).toBe(20);
    expect(
      await violations(new AxeBuilder({ page: open.page }).include('.cell-tradeoff').exclude('.plot > div')),
    ).toEqual([]);
    const download = open.page.waitForEvent('download');
    await cell.getByRole('button', { name: 'Save as JSON' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('Test hall - trade-off - north.json');
    expect(JSON.parse(await readFile(await file.path(), 'utf8'))).toMatchObject({ format: 'beamkeep-tradeoff/1' });
  });

  it('comes back with its settings at the next visit', async () => {
    const { page } = open;
    await page.locator('.saved', { hasText: 'saved in this browser' }).waitFor();
    await page.reload();
    await eventually(() => cell.getByLabel('Ceiling above the fuel').inputValue()).toBe('24');
  });
});
