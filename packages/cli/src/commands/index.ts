import { aimCommand } from './aim.js';
import { budgetCommand } from './budget.js';
import type { CommandMaker } from './command.js';
import { convertCommand } from './convert.js';
import { coveredCommand } from './covered.js';
import { coverScaleCommand } from './coverScale.js';
import { diagnoseCommand } from './diagnose.js';
import { explainCommand } from './explain.js';
import { fleetCommand } from './fleet.js';
import { planCommand } from './plan.js';
import { proveCommand } from './prove.js';
import { recordCommand } from './record.js';
import { respondCommand } from './respond.js';
import { simulateCommand } from './simulate.js';
import { sourcesCommand } from './sources.js';
import { thresholdsCommand } from './thresholds.js';
import { tradeoffCommand } from './tradeoff.js';

/** Every command, in the order of the help. */
export const commands: readonly CommandMaker[] = [
  diagnoseCommand,
  explainCommand,
  fleetCommand,
  respondCommand,
  convertCommand,
  simulateCommand,
  planCommand,
  budgetCommand,
  tradeoffCommand,
  aimCommand,
  coveredCommand,
  thresholdsCommand,
  proveCommand,
  coverScaleCommand,
  recordCommand,
  sourcesCommand,
];
