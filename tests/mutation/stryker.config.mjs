// How one file of a room is changed and tried; `run.mjs` names both.
import { floor } from './rooms.mjs';

const room = process.env.MUTATED_ROOM;
const kept = `node_modules/.cache/mutation/${room}`;

export default {
  mutate: [process.env.MUTATED_FILE],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.mjs', related: false },
  // Words for people are not arithmetic: a text emptied is no wrong number. Tests of words stand beside the words.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // Loops without end are known by their count; the clock is the last resort, for a busy machine must notice nothing.
  timeoutMS: 40_000,
  timeoutFactor: 4,
  incremental: true,
  incrementalFile: `${kept}/incremental.json`,
  tempDirName: `${kept}/copy`,
  ignorePatterns: ['notebook', 'datasets/measured', '**/dist', 'packages/cli', 'packages/beamkeep/docs', '.ci'],
  reporters: [],
  thresholds: { high: 95, low: floor, break: null },
  allowConsoleColors: false,
};
