import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCell, type Desk, desk, eventually, type OpenNotebook, settled } from './notebook.js';

let here: Desk;
let open: OpenNotebook;
beforeAll(async () => {
  here = await desk();
  open = await here.open();
  await settled(open.page);
});
afterAll(() => here?.close());

/** Run in the page: how many findings come onto it, each time that any do. */
const countingFindings = `{
  globalThis.added = [];
  const findings = (node) => (node.matches?.('.finding') ? 1 : 0) + (node.querySelectorAll?.('.finding').length ?? 0);
  new MutationObserver((changes) => {
    const nodes = changes.flatMap(({ addedNodes }) => [...addedNodes]);
    const some = nodes.reduce((sum, node) => sum + findings(node), 0);
    if (some > 0) added.push(some);
  }).observe(document.querySelector('main'), { childList: true, subtree: true });
}`;

describe('a fresh visit', () => {
  it('opens with the invented demo and tells why', async () => {
    const { page } = open;
    await expect(page.locator('.head').textContent()).resolves.toMatch(/invented/);
    await expect(page.locator('table.beams tbody tr').count()).resolves.toBe(4);
    await expect(page.locator('.cell-findings').textContent()).resolves.toMatch(/Knocked out of aim/);
    await expect(page.locator('.cell-findings').textContent()).resolves.toMatch(/Cannot be told from smoke/);
    await eventually(() => page.locator('.cell-margin .plot').count()).toBe(4);
  });

  it('draws and tells time on the clock of the site', async () => {
    const { page } = open;
    await expect(page.locator('.cell-signal .xtitle').last().textContent()).resolves.toMatch(/time in Europe\/Lisbon/);
    await expect(page.locator('.where').first().textContent()).resolves.toMatch(/^1\sFeb\s2027, 00:00/);
  });

  it('goes to the stretch of a finding and back to the whole', async () => {
    const { page } = open;
    const where = page.locator('.where').first();
    const whole = await where.textContent();
    await page
      .locator('.finding')
      .filter({ hasText: 'Cannot be told from smoke' })
      .first()
      .getByText('Show on the plot')
      .click();
    await eventually(() => where.textContent()).not.toBe(whole);
    await expect(page.locator('.chosen').textContent()).resolves.toMatch(/Cannot be told from smoke/);
    await page.getByRole('button', { name: 'Whole log' }).click();
    await eventually(() => where.textContent()).toBe(whole);
  });

  it('answers the complaint: why on Tuesdays at twenty to seven?', async () => {
    const { page } = open;
    const then = page.locator('.cell-why .then', { hasText: 'Beam B3' });
    await eventually(() => then.textContent()).toMatch(/keeps to Tuesdays/);
    await expect(then.textContent()).resolves.toMatch(/treat as fire/);
    await page.locator('.cell-why').getByLabel('A time').fill('half past never');
    await page.locator('.cell-why').getByRole('button', { name: 'Ask' }).click();
    await eventually(() => page.locator('.cell-why .trouble').textContent()).toMatch(/half past never/);
  });

  it('gives the answer in the first lines, and the way to each fire signal', async () => {
    const { page } = open;
    const why = page.locator('.cell-why');
    await why.getByLabel('A time').fill('Tue 06:40');
    await why.getByRole('button', { name: 'Ask' }).click();
    const then = why.locator('.then', { hasText: 'Beam B3' });
    await eventually(() => then.locator('.short-answer').textContent()).toBe(
      'Dust or steam from work at this hour on 14 daysCannot be told from smoke at this hour on 2 days: treat each as fire',
    );
    await eventually(() => then.locator('.places').textContent()).toMatch(
      /Fire by these settings: 16\sMar\s2027, 06:41, /,
    );
    await then.getByRole('button', { name: /^16\sMar\s2027, 06:41$/ }).click();
    await eventually(() => page.locator('.where').first().textContent()).toMatch(/^1[56]\sMar\s2027.* to 1[67]/);
    await page.getByRole('button', { name: 'Whole log' }).click();
  });

  it('chooses a finding by the name beside its bar, and asks about that place instead of the typed time', async () => {
    const { page } = open;
    const finding = page.locator('.finding', { hasText: 'Cannot be told from smoke' }).filter({
      has: page.locator('.when', { hasText: '4 May 2027' }),
    });
    const number = await finding.locator('.finding-number').textContent();
    const name = page.getByText(`${number} like smoke`, { exact: true }).first();
    await name.waitFor();
    const lane = page.locator('.lane', { has: name });
    await eventually(async () => {
      // Each time anew, and at once: what comes onto the page meanwhile moves the lane, between the name and the press as well.
      await lane.evaluate((element) => element.scrollIntoView({ behavior: 'instant', block: 'center' }));
      const box = await name.boundingBox();
      if (!box) return '';
      await page.mouse.move(box.x + 10, box.y + 8);
      await page.mouse.move(box.x + 25, box.y + 8, { steps: 4 });
      if (!(await page.locator('.hoverlayer').allTextContents()).join().includes(`${number} act`)) return '';
      await page.mouse.down();
      await page.mouse.up();
      return (await page.locator('.chosen').allTextContents()).join();
    }).toMatch(new RegExp(`^${number} .*Cannot be told from smoke`));
    await eventually(() => page.locator('.cell-why').textContent()).toMatch(/Asked about 4\sMay\s2027, (0|1)\d:\d\d/);
    await page.locator('.chosen').getByText('let go').click();
    await page.locator('.cell-why').getByRole('button', { name: 'Ask' }).click();
    await eventually(() => page.locator('.cell-why').textContent()).toMatch(/Asked about Tue 06:40/);
  });

  it('asks about a place that is clicked in the plots', async () => {
    const { page } = open;
    await page.locator('.cell-why').getByLabel('A time').fill('');
    await page.locator('.cell-why').getByRole('button', { name: 'Ask' }).click();
    await page
      .locator('.lane')
      .nth(2)
      .locator('.plot')
      .click({ position: { x: 500, y: 200 } });
    await eventually(() => page.locator('.cell-why').textContent()).toMatch(/Asked about \d+\s\w+\s2027, \d\d:\d\d/);
  });

  it('lays the panel’s list beside the log', async () => {
    const { page } = open;
    await expect(page.locator('.cell-events tbody tr').filter({ visible: true }).count()).resolves.toBe(38);
    await expect(page.locator('.cell-events .answer').textContent()).resolves.toMatch(/140 s ahead/);
  });

  it('reads an aim scan and a covered test', async () => {
    const { page } = open;
    const file = (name: string): string =>
      fileURLToPath(new URL(`../../datasets/tram-depot/commissioning/${name}`, import.meta.url));
    await addCell(page, 'an aim scan');
    const aim = page.locator('.cell-aim');
    await aim.getByLabel('aim scan', { exact: true }).setInputFiles(file('scan-b1.csv'));
    await aim.getByLabel('Where the head was left [degrees]').fill('0,5');
    await eventually(() => aim.textContent()).toMatch(/look again\. .*on the flank/);
    await aim.locator('.main-svg').first().waitFor();
    await expect(aim.locator('details.minded').textContent()).resolves.toMatch(
      /read its class label.*never look into it/,
    );
    await aim.getByText('What holds the head').click();
    await aim.getByLabel('Height of the frame').fill('9,4');
    await eventually(() => aim.locator('table tbody tr').allTextContents()).toEqual([
      expect.stringMatching(/9\.4 m that sways by height\/60.*0\.955°157\smm388 %.*\(.*\)/),
      expect.stringMatching(/height\/100/),
    ]);
    await aim.getByLabel('Span of the roof member').fill('-18');
    await eventually(() => aim.locator('.trouble').textContent()).toMatch(/left out: Span of the roof member/);
    await addCell(page, 'a covered test');
    const test = page.locator('.cell-covered');
    await expect(test.locator('.minded[open]').textContent()).resolves.toMatch(/out of service.*opaque and dull/);
    await test.getByLabel('log of a covered test', { exact: true }).setInputFiles(file('covered-b1.csv'));
    await eventually(() => test.textContent()).toMatch(/Beam B1: fit\. Covered, the beam still reads/);
    await test.getByLabel('log of a covered test', { exact: true }).setInputFiles(file('scan-b1.csv'));
    await test.locator('.trouble').waitFor();
  });

  it('switches obscuration, level and loss', async () => {
    const { page } = open;
    for (const [scale, title] of [
      ['level %', 'level [%]'],
      ['loss dB', 'loss [dB]'],
      ['obscuration %', 'obscuration [%]'],
    ] as const) {
      await page.locator('.cell-signal').getByLabel(scale, { exact: true }).check();
      await eventually(() => page.locator('.cell-signal .ytitle').first().textContent()).toBe(title);
    }
  });

  it('has no button that sends a chart away, and asks nothing of another origin', async () => {
    const { page, requests } = open;
    await expect(page.locator('.modebar-btn').count()).resolves.toBe(0);
    await expect(page.getByRole('button', { name: /share|cloud|send/i }).count()).resolves.toBe(0);
    const origin = new URL(here.url).origin;
    const foreign = requests.filter(
      (url) => !url.startsWith(`${origin}/some/where/else/`) && !/^(data|blob):/.test(url),
    );
    expect(foreign).toEqual([]);
  });

  it('says nothing on the console but what the policy forbids of the plotting library’s styles', async () => {
    expect(open.errors.filter((error) => !/inline style.*Content Security Policy/.test(error))).toEqual([]);
  });

  it('shows the stretch in sight as a table', async () => {
    const { page } = open;
    await page.getByText('The stretch in sight as a table').click();
    await eventually(() => page.locator('.cell-signal .table tbody tr').count()).toBe(24);
    await expect(page.locator('.cell-signal .table thead').textContent()).resolves.toBe('fromB1B2B3B4');
  });

  it('converts units', async () => {
    const { page } = open;
    const cell = page.locator('.cell-units');
    await cell.getByLabel('Value').fill('35');
    await cell.getByLabel('Smoke crossed [m]').fill('50');
    await eventually(() => cell.locator('tr', { hasText: 'loss per metre' }).textContent()).toMatch(/0\.03742/);
    await cell.getByLabel('Value').fill('-1');
    await eventually(() => cell.textContent()).toMatch(/must|0 or more/);
  });

  it('puts findings on the page a few at a time, and answers between them', async () => {
    const { page } = open;
    await page.evaluate(countingFindings);
    await page.getByRole('button', { name: 'Demo', exact: true }).click();
    await eventually(() => page.evaluate<number[]>('added')).not.toEqual([]);
    await settled(page);
    const added = await page.evaluate<number[]>('added');
    expect(added.reduce((sum, some) => sum + some)).toBe(await page.locator('.finding').count());
    expect(Math.max(...added)).toBeLessThanOrEqual(6);
  });

  it('keeps what was chosen above the first steps', async () => {
    const { page, close } = await here.open({ firstSteps: true });
    await settled(page);
    await page.locator('.finding').first().getByText('Show on the plot').click();
    const bottom = await page.evaluate<string>("getComputedStyle(document.querySelector('.chosen')).bottom");
    const steps = await page.getByLabel('First steps').boundingBox();
    expect(Number.parseFloat(bottom)).toBeGreaterThan(900 - (steps?.y ?? 0));
    await close();
  });

  it('shows the way in five steps that can be skipped for good', async () => {
    const first = await here.open({ firstSteps: true });
    const guide = first.page.getByLabel('First steps');
    for (let step = 1; step <= 5; step++) {
      await eventually(() => guide.textContent()).toMatch(new RegExp(`^${step} of 5`));
      await guide.getByRole('button', { name: step < 5 ? 'Next' : 'Done' }).click();
    }
    await eventually(() => guide.count()).toBe(0);
    await first.page.reload();
    await first.page.locator('.cell').first().waitFor();
    expect(await guide.count()).toBe(0);
    await first.close();
  });
});
