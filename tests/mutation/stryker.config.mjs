// How files of a room are changed and tried; `run.mjs` names both.
import { floor, keptIn } from './rooms.mjs';

const room = process.env.MUTATED_ROOM;

export default {
  mutate: process.env.MUTATED_FILES.split(','),
  plugins: ['./tests/mutation/oneProcess.mjs'],
  testRunner: 'oneProcess',
  // Words for people are not arithmetic: a text emptied is no wrong number. Tests of words stand beside the words.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // Changes without end are known by their processor time; the clock is the last resort.
  timeoutMS: 600_000,
  dryRunTimeoutMinutes: 60,
  timeoutFactor: 20,
  incremental: true,
  incrementalFile: keptIn(room, Number(process.env.MUTATED_ONE_IN)),
  tempDirName: `node_modules/.cache/mutation/${room}/copy`,
  ignorePatterns: ['notebook', 'datasets/measured', '**/dist', 'packages/cli', '.ci'],
  reporters: [],
  thresholds: { high: 95, low: floor, break: null },
  allowConsoleColors: false,
};
