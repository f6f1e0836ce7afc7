import type { Severity } from 'beamkeep/diagnosis';

/** The reader's duty, spelt out. */
export const duty: Readonly<Record<Severity, string>> = {
  act: 'go and look, or treat as fire',
  watch: 'plan work on it',
  note: 'know it',
};
