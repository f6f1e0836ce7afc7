import type { Sourced } from './sourced.js';

const rule = 'beamkeep, smoke rule: in doubt it is smoke-like';

/** Obscuration to which a growth must lead to be smoke-like. */
export const smokeGrowth = { value: 3, unit: '%', seen: 'own choice', source: rule } satisfies Sourced;

/** Slowest growth that is smoke-like. */
export const slowestSmoke = {
  value: 0.02,
  unit: 'dB/min',
  seen: 'own choice',
  source: rule,
  note: 'a smouldering chair whose smoke doubles in 617 s passes 35 % at 0.13 dB/min',
} satisfies Sourced;

/** Spreads of the samples before it that a growth must reach, to be clearly beyond the noise. */
export const smokeClear = { value: 5, unit: '1', seen: 'own choice', source: rule } satisfies Sourced;

/** Fewest samples in a growth. */
export const smokeSamples = { value: 3, unit: 'samples', seen: 'own choice', source: rule } satisfies Sourced;

/** Share of the alarm threshold from which smoke-like means act. */
export const smokeActShare = { value: 0.5, unit: '1', seen: 'own choice', source: rule } satisfies Sourced;

/** Time by which a finding may outlast its episode. */
export const smokeEpisodeSpare = { value: 6, unit: 'h', seen: 'own choice', source: rule } satisfies Sourced;
