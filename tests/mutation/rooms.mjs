/*
 * The rooms whose code is changed on purpose, one small change at a time (a sign turned, a bound moved, a branch taken
 * or left), and the tests of which at least one must fail each time. A change that no test notices is a survivor: read
 * it, and ask what the tests should have known.
 */

import { createHash } from 'node:crypto';
import { readdirSync, statSync } from 'node:fs';

export const library = 'packages/beamkeep/src';

/** Per room, the tests that must notice; those that stand beside its files are always among them. */
export const mutatedRooms = {
  attenuation: [`${library}/convert.test.ts`],
  forecast: [],
  response: [`${library}/respond.test.ts`],
  optics: ['tests/published/optics'],
  commissioning: [
    ...['aim', 'covered', 'prove', 'thresholds'].map((question) => `${library}/${question}.test.ts`),
    'tests/commissioning/record.test.ts',
  ],
};

/** In the sample of `npm run check` one change in so many is tried: about 150 a room, so that a score is known within 5 %. */
export const sampledOneIn = { attenuation: 2, forecast: 4, response: 5, optics: 7, commissioning: 24 };

/**
 * Whether a change is of a sample: drawn by its checksum, so that the next run takes the same ones and nobody chooses.
 *
 * @param file from the root of the project
 * @param start where it begins, line and column from 1
 */
export function inSample({ file, start: { line, column }, replacement }, oneIn) {
  const text = JSON.stringify([file, line, column, replacement]);
  return createHash('sha256').update(text).digest().readUInt32LE() % oneIn === 0;
}

/** The least share of the changes that must be noticed [%]. */
export const floor = 85;

/** Tests of a room, file by file. */
export const testFilesOf = (room) =>
  [`${library}/${room}`, ...mutatedRooms[room]].flatMap((path) =>
    path.endsWith('.ts')
      ? [path]
      : readdirSync(path, { recursive: true })
          .filter((name) => name.endsWith('.test.ts'))
          .map((name) => `${path}/${name}`),
  );

/** What is changed in a room: its code, not its tests, from the smallest file. */
export const filesOf = (room) =>
  readdirSync(`${library}/${room}`, { recursive: true })
    .filter((name) => /(?<!\.test)\.ts$/.test(name) && !/(^|\/)index\.ts$/.test(name))
    .map((name) => `${library}/${room}/${name}`)
    .sort((a, b) => statSync(a).size - statSync(b).size);

/** Where the outcome of a room is kept, of every change or of a sample. */
export const keptIn = (room, oneIn) =>
  `node_modules/.cache/mutation/${room}/${oneIn === 1 ? 'incremental' : `one-in-${oneIn}`}.json`;
