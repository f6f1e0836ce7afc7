import type { NumberedFinding } from '../../bench/reading.js';

/** Name of a finding that stays the same when the log is read again: its number may not. */
export const verdictKey = ({ beam, cause, start }: Pick<NumberedFinding, 'beam' | 'cause' | 'start'>): string =>
  `${beam} ${cause} ${new Date(start).toISOString()}`;
