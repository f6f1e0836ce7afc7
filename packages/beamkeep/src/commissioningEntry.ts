// The entry `beamkeep/commissioning`: the questions of a commissioning day, and the room behind them.
export { type AimQuestion, aim } from './aim.js';
export * from './commissioning/index.js';
export { covered } from './covered.js';
export { type TextTable, textTable } from './log/index.js';
export { type ProofQuestion, proofPlan, prove } from './prove.js';
export { type DayFiles, record } from './record.js';
export { type ThresholdsQuestion, thresholds } from './thresholds.js';
