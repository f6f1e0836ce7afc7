// Changes a room's code on purpose, one small change at a time, and counts how many changes its tests notice.
//
//   npm run mutate                      every room, from the smallest
//   npm run mutate -- optics forecast   these
//   npm run mutate -- optics/lobe.ts    one file
//   npm run mutate -- optics --survivors   and lists what no test noticed, by file and line
//   npm run mutate -- optics --one-in 4    one change in four, the same ones each time: a quarter of the time
//   npm run mutate -- --sample             of every room as many as `npm run check` tries, with the floor held as for all
//
// A sample is drawn by what a change is and where it stands (its checksum): fixed while the code is, and not of anyone's
// choosing. What it tells of the room is told with its 95 % interval.
//
// Only what changed since the last run is tried again, and what a run has done is kept every few files: it may be stopped
// and goes on where it was. A room takes minutes; the process steps back for others.
import { spawnSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import { setPriority } from 'node:os';
import { wilson } from '../evaluation/uncertainty.ts';
import { filesOf, floor, inSample, keptIn, mutatedRooms, sampledOneIn } from './rooms.mjs';

const known = Object.keys(mutatedRooms);
const { rooms, only, survivors, oneInOf } = asked(process.argv.slice(2));

/** Code that is changed in one run, where every change is tried. */
const bytesInARun = 40_000;

setPriority(10);
const scores = rooms.map((room) => {
  const files = filesOf(room).filter((file) => only.length === 0 || only.some((name) => file.endsWith(`/src/${name}`)));
  const oneIn = oneInOf(room);
  const broken = handfuls(files, oneIn * bytesInARun).filter((some) => {
    const { status } = spawnSync(
      'npx',
      ['stryker', 'run', 'tests/mutation/stryker.config.mjs', '--logLevel', 'error'],
      {
        env: { ...process.env, MUTATED_ROOM: room, MUTATED_FILES: some.join(','), MUTATED_ONE_IN: String(oneIn) },
        stdio: 'inherit',
      },
    );
    if (status === 0) for (const file of some) console.log(`        ${file}: ${counted(scoreOf(room, oneIn, file))}`);
    return status !== 0;
  });
  const score = broken.length === 0 ? scoreOf(room, oneIn) : { room, failed: broken.flat() };
  console.log(told({ ...score, oneIn }));
  return score;
});
process.exitCode = scores.some(({ share, failed }) => failed || share < floor) ? 1 : 0;

/** Files to be changed in one run: so many that learning what each test comes by is worth it, so few that little is lost. */
function handfuls(files, mostBytes) {
  const all = [];
  let left = 0;
  for (const file of files) {
    const { size } = statSync(file);
    left -= size;
    if (left >= 0) all.at(-1).push(file);
    else {
      all.push([file]);
      left = mostBytes - size;
    }
  }
  return all;
}

/** Rooms and options of the command line. */
function asked(args) {
  const share = args.indexOf('--one-in');
  const oneIn = share < 0 ? 1 : Number(args.splice(share, 2)[1]);
  const sample = args.includes('--sample');
  const named = args.filter((arg) => !arg.startsWith('--'));
  const names = named.map((name) => name.split('/')[0]);
  const wrong = [
    ...names.filter((name) => !known.includes(name)),
    ...args.filter((arg) => /^--(?!(survivors|sample)$)/.test(arg)),
    ...(Number.isInteger(oneIn) && oneIn > 0 ? [] : ['--one-in']),
  ];
  if (wrong.length > 0) {
    console.error(`mutate: "${wrong[0]}" is none of ${known.join(', ')}, --survivors, --sample, --one-in NUMBER`);
    process.exit(2);
  }
  return {
    rooms: names.length > 0 ? [...new Set(names)] : known,
    only: named.filter((name) => name.includes('/')),
    survivors: args.includes('--survivors'),
    oneInOf: (room) => (sample ? sampledOneIn[room] : oneIn),
  };
}

/** What came out of a room, or of one of its files. Changes that do not compile, or are not of the sample, do not count. */
function scoreOf(room, oneIn, only) {
  const { files } = JSON.parse(readFileSync(keptIn(room, oneIn), 'utf8'));
  const changes = Object.entries(files)
    .filter(([path]) => only === undefined || path === only)
    .flatMap(([path, { mutants }]) => mutants.map((mutant) => ({ path, ...mutant })))
    .filter(({ path, location: { start }, replacement }) => inSample({ file: path, start, replacement }, oneIn));
  const count = (...statuses) => changes.filter(({ status }) => statuses.includes(status)).length;
  const noticed = count('Killed', 'Timeout');
  const unnoticed = changes.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  const tried = noticed + unnoticed.length;
  const share = tried === 0 ? 100 : (100 * noticed) / tried;
  return { room, noticed, tried, share, unnoticed, endless: count('Timeout'), untouched: count('NoCoverage') };
}

/** 95 % interval of the share [%]. */
function within({ noticed, tried }) {
  return wilson(noticed, tried)
    .map((side) => (100 * side).toFixed(0))
    .join(' to ');
}

function counted({ noticed, tried, share, endless, untouched }) {
  return `${share.toFixed(1)} % of ${tried} changes noticed (${noticed}, ${endless} of them by not ending); ${untouched} where no test comes by`;
}

function told({ room, failed, oneIn, ...score }) {
  if (failed) return `FAILED  ${room}: could not be tried: ${failed.join(', ')}`;
  const sample = oneIn === 1 ? '' : `; a sample, one change in ${oneIn}: ${within(score)} % of all`;
  const lines = survivors
    ? score.unnoticed.map(({ path, location, mutatorName, replacement }) => {
        const shown = (replacement ?? '').replace(/\s+/g, ' ').slice(0, 90);
        return `        ${path}:${location.start.line}:${location.start.column} ${mutatorName} ${shown}`;
      })
    : [];
  return [`${score.share >= floor ? 'passed' : 'FAILED'}  ${room}: ${counted(score)}${sample}`, ...lines].join('\n');
}
