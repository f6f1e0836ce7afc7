/** What an entry of a panel's list is about; `other` for the panel's own words. */
export type EntryKind = 'fire' | 'fault' | 'reset' | 'other';

const kinds: ReadonlyMap<string, EntryKind> = new Map([
  ['fire', 'fire'],
  ['alarm', 'fire'],
  ['fire alarm', 'fire'],
  ['fault', 'fault'],
  ['trouble', 'fault'],
  ['reset', 'reset'],
]);

/**
 * The kind of an entry by its words. Only the whole word counts: an "alarm test" or a "fault cleared" is no signal.
 *
 * @param what as the panel wrote it; upper and lower case are one
 */
export const entryKind = (what: string): EntryKind =>
  kinds.get(what.trim().toLowerCase().replaceAll(/\s+/g, ' ')) ?? 'other';
