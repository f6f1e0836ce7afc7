// Changes a room's code on purpose, one small change at a time, and counts how many changes its tests notice.
//
//   npm run mutate                      every room, from the smallest
//   npm run mutate -- optics forecast   these
//   npm run mutate -- optics --survivors   and lists what no test noticed, by file and line
//
// Only what changed since the last run is tried again. A room takes minutes; the process steps back for others.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { fileURLToPath } from 'node:url';
import { floor, mutatedRooms } from './rooms.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const known = Object.keys(mutatedRooms);
const { rooms, survivors } = asked(process.argv.slice(2));

setPriority(10);
const scores = rooms.map((room) => {
  const { status } = spawnSync('npx', ['stryker', 'run', 'tests/mutation/stryker.config.mjs', '--logLevel', 'error'], {
    cwd: root,
    env: { ...process.env, MUTATED_ROOM: room },
    stdio: 'inherit',
  });
  const score = status === 0 ? scoreOf(room) : { room, failed: true };
  console.log(told(score));
  return score;
});
process.exitCode = scores.some(({ share, failed }) => failed || share < floor) ? 1 : 0;

/** Rooms and options of the command line. */
function asked(args) {
  const names = args.filter((arg) => !arg.startsWith('--'));
  const wrong = [
    ...names.filter((name) => !known.includes(name)),
    ...args.filter((arg) => /^--(?!survivors$)/.test(arg)),
  ];
  if (wrong.length > 0) {
    console.error(`mutate: "${wrong[0]}" is none of ${known.join(', ')}, --survivors`);
    process.exit(2);
  }
  return { rooms: names.length > 0 ? names : known, survivors: args.includes('--survivors') };
}

/** What came out of a room. Changes that do not compile or run count neither way. */
function scoreOf(room) {
  const { files } = JSON.parse(readFileSync(`${root}node_modules/.cache/mutation/${room}/report.json`, 'utf8'));
  const changes = Object.entries(files).flatMap(([path, { mutants }]) =>
    mutants.map((mutant) => ({ path, ...mutant })),
  );
  const count = (...statuses) => changes.filter(({ status }) => statuses.includes(status)).length;
  const noticed = count('Killed', 'Timeout');
  const unnoticed = changes.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  return {
    room,
    noticed,
    tried: noticed + unnoticed.length,
    untouched: count('NoCoverage'),
    unnoticed,
    share: (100 * noticed) / (noticed + unnoticed.length),
  };
}

function told({ room, failed, noticed, tried, untouched, share, unnoticed }) {
  if (failed) return `FAILED  ${room}: could not be tried`;
  const lines = survivors
    ? unnoticed.map(({ path, location, mutatorName, replacement }) => {
        const shown = (replacement ?? '').replace(/\s+/g, ' ').slice(0, 90);
        return `        ${path}:${location.start.line}:${location.start.column} ${mutatorName} ${shown}`;
      })
    : [];
  const verdict = share >= floor ? 'passed' : 'FAILED';
  return [
    `${verdict}  ${room}: ${share.toFixed(1)} % of ${tried} changes noticed (${noticed}); ${untouched} where no test comes by`,
    ...lines,
  ].join('\n');
}
