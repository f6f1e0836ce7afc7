import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Text of a file of measurements; its source and licence stand in the README beside it. */
export const measuredFile = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../datasets/measured/${name}.csv`, import.meta.url)), 'utf8');

/** The cells of a file, header first. */
export const cellsOf = (name: string): string[][] =>
  measuredFile(name)
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(','));
