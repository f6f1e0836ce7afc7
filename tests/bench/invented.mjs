// The invented log that is measured: four beams at 1 s, and its site. Made by make-log.mjs, which is no part of this project.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * The folder with the programs that make and scan the log: the one that is named, or BEAMKEEP_FLOOR, or a folder bench
 * in a folder beside this workspace. Ends the program where one of them is not there.
 *
 * @param root of the workspace
 * @param named by the option --floor
 * @param needed programs that must be there
 */
export function floorFolder(root, named, needed) {
  const beside = readdirSync(join(root, '..')).map((name) => join(root, '..', name, 'bench'));
  const found = beside.find((folder) => existsSync(join(folder, 'make-log.mjs')));
  const floor = resolve(named ?? process.env.BEAMKEEP_FLOOR ?? found ?? 'bench');
  for (const program of needed) {
    if (existsSync(join(floor, program))) continue;
    console.error(`bench: ${join(floor, program)} is not there: name its folder by --floor or BEAMKEEP_FLOOR`);
    process.exit(2);
  }
  return floor;
}

/** Writes a log of so many rows, and what was put into it. */
export function makeLog(floor, file, rows, truth) {
  const made = spawnSync(
    process.execPath,
    [join(floor, 'make-log.mjs'), String(rows), '--out', file, '--truth', truth],
    { stdio: 'inherit' },
  );
  if (made.status !== 0) throw new Error('make-log.mjs failed');
}

/** Writes its site file. */
export function makeSite(file) {
  const beams = ['b1', 'b2', 'b3', 'b4'].map((signalColumn, at) => ({
    id: `B${at + 1}`,
    layout: 'reflective',
    separation: 60,
    signalColumn,
    temperatureColumn: 't_roof',
  }));
  writeFileSync(file, JSON.stringify({ format: 'beamkeep-site/1', name: 'Invented hall', beams }));
}
