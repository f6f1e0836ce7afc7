import { readFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';

/** A file of the depot's invented commissioning day. */
export const dayFile = (name: string): string =>
  readFileSync(new URL(`../../datasets/tram-depot/commissioning/${name}`, import.meta.url), 'utf8');

/** Gives a file to a field of a cell. */
export const give = (cell: Locator, field: string, name: string, text: string): Promise<void> =>
  cell
    .getByLabel(field, { exact: true })
    .setInputFiles([{ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) }]);

/** Fills a proof cell with the logged test of one of the depot's beams. */
export async function giveProof(cell: Locator, beam: 'b1' | 'b2' | 'b3'): Promise<void> {
  await give(cell, 'proof sheet', `proof-${beam}.sheet.json`, dayFile(`proof-${beam}.sheet.json`));
  await give(cell, 'panel’s list', 'events.csv', dayFile('events.csv'));
  await cell.getByLabel('Panel’s clock ahead of the logger’s [s]').fill('140');
  await give(cell, 'log of the test', `proof-${beam}.csv`, dayFile(`proof-${beam}.csv`));
}
