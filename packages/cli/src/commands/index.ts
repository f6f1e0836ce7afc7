import type { CommandMaker } from './command.js';

/** Every command by its word, in the order of the help; loaded when it is wanted, with what it needs. */
export const commands: Readonly<Record<string, () => Promise<CommandMaker>>> = {
  diagnose: async () => (await import('./diagnose.js')).diagnoseCommand,
  explain: async () => (await import('./explain.js')).explainCommand,
  fleet: async () => (await import('./fleet.js')).fleetCommand,
  respond: async () => (await import('./respond.js')).respondCommand,
  convert: async () => (await import('./convert.js')).convertCommand,
  simulate: async () => (await import('./simulate.js')).simulateCommand,
  plan: async () => (await import('./plan.js')).planCommand,
  budget: async () => (await import('./budget.js')).budgetCommand,
  tradeoff: async () => (await import('./tradeoff.js')).tradeoffCommand,
  aim: async () => (await import('./aim.js')).aimCommand,
  covered: async () => (await import('./covered.js')).coveredCommand,
  thresholds: async () => (await import('./thresholds.js')).thresholdsCommand,
  prove: async () => (await import('./prove.js')).proveCommand,
  'cover-scale': async () => (await import('./coverScale.js')).coverScaleCommand,
  record: async () => (await import('./record.js')).recordCommand,
  numbers: async () => (await import('./sources.js')).sourcesCommand,
};
