import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCell, type Desk, desk, dropFiles, type OpenNotebook, openSmall, plotsDrawn } from './notebook.js';
import { smallLog, smallSite } from './smallLog.js';

let here: Desk;
beforeAll(async () => {
  here = await desk();
});
afterAll(() => here?.close());

/** What a button hands to the downloads: its name and its bytes. */
async function saved(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await button.click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

const png = (bytes: Buffer): { width: number; height: number } => ({
  width: bytes.readUInt32BE(16),
  height: bytes.readUInt32BE(20),
});

describe('pictures as files', () => {
  let open: OpenNotebook;
  beforeAll(async () => {
    open = await openSmall(here, { colorScheme: 'dark' });
  });
  afterAll(() => open?.close());

  it('a plot is saved as SVG and as PNG, light in the dark theme, named after site and cell', async () => {
    const { page, errors } = open;
    const svg = await saved(page, page.getByRole('button', { name: 'Save the picture as SVG: signal north' }));
    expect(svg.name).toBe('Test hall - signal - north.svg');
    const text = svg.bytes.toString();
    expect(text).toMatch(/^<svg[^>]+width="960"/);
    expect(text).toMatch(/>Test hall, signal, north</);
    expect(text).toMatch(/time in Asia\/Kathmandu/);
    expect(text).toMatch(/<rect[^>]+fill="rgb\(251, 250, 246\)"/);
    expect(text).toMatch(/obscuration \[%\]/);
    const pixels = await saved(page, page.getByRole('button', { name: 'Save the picture as PNG: signal north' }));
    expect(pixels.name).toBe('Test hall - signal - north.png');
    expect(pixels.bytes.subarray(1, 4).toString()).toBe('PNG');
    expect(png(pixels.bytes).width).toBe(1920);
    expect(pixels.bytes.length).toBeGreaterThan(20_000);
    expect(errors.filter((error) => !/inline style.*Content Security Policy/.test(error))).toEqual([]);
  });

  it('a plot is printed light and as wide as a page, and stands as before afterwards', async () => {
    const { page } = open;
    /** Width of each picture that is seen, and whether it is written dark on light. */
    const seen = () =>
      page.locator('.plot').evaluateAll((plots) =>
        plots.map((plot) =>
          [...plot.querySelectorAll('.main-svg:first-of-type')]
            .filter((svg) => svg.getClientRects().length > 0)
            .map((svg) => {
              const ink = svg
                .querySelector('text')
                ?.getAttribute('style')
                ?.match(/fill: rgb\((\d+)/)?.[1];
              return `${svg.getAttribute('width')} ${Number(ink) < 128 ? 'light' : 'dark'}`;
            }),
        ),
      );
    const before = await seen();
    await expect(page.locator('.plot[aria-busy="false"]').count()).resolves.toBe(before.length);
    expect(before.flat().filter((picture) => /^660|light/.test(picture))).toEqual([]);
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    for (const pictures of await seen()) expect(pictures).toEqual(['660 light']);
    // A lane may come to stand on a sheet of paper without the one that carries the time axis on the screen.
    const lanes = await page.locator('.lane').all();
    expect(lanes).toHaveLength(2);
    for (const lane of lanes) await expect(lane.locator('.xtick:visible').count()).resolves.toBeGreaterThan(2);
    await page.evaluate("dispatchEvent(new Event('afterprint'))");
    await expect(seen()).resolves.toEqual(before);
  });

  it('every picture on the page has both buttons, drawings too', async () => {
    const { page } = open;
    await addCell(page, 'a layout of beams by a rule set');
    await page.locator('.drawing svg').first().waitFor();
    for (const frame of await page.locator('.plot-frame').all())
      await expect(frame.getByRole('button', { name: /^Save the picture as/ }).count()).resolves.toBe(2);
    await expect(page.locator('.plot').count()).resolves.toBe(await page.locator('.plot-frame > .plot').count());
    const drawing = await saved(page, page.getByRole('button', { name: 'Save the picture as PNG: section' }));
    expect(drawing.name).toBe('plan - section.png');
    expect(png(drawing.bytes).width).toBeGreaterThan(600);
  });

  it('hostile names are text in a picture, and nothing in its file name', async () => {
    const names = ['<img src=x onerror="document.title=1">', '=cmd()'] as const;
    const { page, close } = await here.open();
    await page.locator('.cell-log').waitFor();
    await dropFiles(page, [
      { name: 'hall.csv', text: smallLog(names) },
      { name: 'hall.json', text: smallSite(names, '<script>document.title=1</script>../x') },
    ]);
    await page.locator('table.beams', { hasText: '=cmd()' }).waitFor();
    await plotsDrawn(page);
    const svg = await saved(page, page.getByRole('button', { name: /^Save the picture as SVG: signal <img/ }));
    expect(svg.name).toBe('scriptdocumenttitle1scriptx - signal - img srcx onerrordocumenttitle1.svg');
    expect(svg.bytes.toString()).not.toMatch(/<(script|img|foreignObject)\b/i);
    await close();
  });
});

describe('findings as files', () => {
  it('as CSV in which no cell is a formula, and as JSON in the project’s own format', async () => {
    const names = ['=HYPERLINK("x")', 'south'] as const;
    const { page, close } = await here.open();
    await page.locator('.cell-log').waitFor();
    await dropFiles(page, [
      { name: 'hall.csv', text: smallLog(names) },
      { name: 'hall.json', text: smallSite(names, '=1+1') },
    ]);
    await page.locator('.finding').first().waitFor();
    const csv = await saved(page, page.getByRole('button', { name: 'Save as CSV' }));
    expect(csv.name).toBe('11 - findings.csv');
    const [, line = ''] = csv.bytes.toString().split('\r\n');
    expect(line).toMatch(/^1,"'=HYPERLINK\(""x""\)",/);
    expect(csv.bytes.toString()).not.toMatch(/(^|,)"?[=+@]/m);
    const json = await saved(page, page.getByRole('button', { name: 'Save as JSON' }));
    expect(JSON.parse(json.bytes.toString())).toMatchObject({ format: 'beamkeep-diagnosis/1' });
    const reduced = await saved(page, page.getByRole('button', { name: 'Save the reduced log' }));
    expect(reduced.name).toBe('11 - reduced log.csv');
    const lines = reduced.bytes.toString().trimEnd().split('\r\n');
    expect(lines).toHaveLength(1 + 2 * 14_400);
    expect(lines[1]).toMatch(/^"'=HYPERLINK\(""x""\)",2027-06-01T00:00:00\.000Z,/);
    await close();
  });
});
