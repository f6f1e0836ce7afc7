import type { Score } from './score.js';

/** What a figure must reach, and what is aimed at. `most`: smaller is better. */
export interface Floor {
  readonly name: string;
  readonly value: (score: Score) => number;
  readonly must: number;
  readonly aim: number;
  readonly most: boolean;
}

/** The gate. */
export const floors: readonly Floor[] = [
  { name: 'macro-F1', value: (s) => s.macroF1.value, must: 0.9, aim: 0.97, most: false },
  { name: 'localisation', value: (s) => s.localisation.value, must: 0.85, aim: 0.95, most: false },
  { name: 'smoke found', value: (s) => s.smokeRecall.value, must: 1, aim: 1, most: false },
  { name: 'false smoke, by the rule', value: (s) => s.falseSmokeByRule.value, must: 0.5, aim: 0.1, most: true },
  { name: 'false watch or act', value: (s) => s.falseAlerts.value, must: 0.2, aim: 0.05, most: true },
  { name: 'calibration error', value: (s) => s.calibrationError.value, must: 0.05, aim: 0.02, most: true },
  { name: 'forecast error', value: (s) => s.forecastError.value, must: 0.14, aim: 0.1, most: true },
  { name: 'forecast coverage', value: (s) => s.forecastCoverage.limits[1], must: 0.8, aim: 0.8, most: false },
];

/** How a figure stands: NaN (nothing to judge) is neither below nor above. */
export type Standing = 'aim reached' | 'must reached' | 'below' | 'nothing to judge';

/** Where a figure stands between its floor and its aim. */
export function standing({ value, must, aim, most }: Floor, score: Score): Standing {
  const reached = value(score);
  if (Number.isNaN(reached)) return 'nothing to judge';
  const meets = (level: number): boolean => (most ? reached <= level : reached >= level);
  return meets(aim) ? 'aim reached' : meets(must) ? 'must reached' : 'below';
}
