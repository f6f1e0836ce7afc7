import { type CauseWord, causes } from 'beamkeep/diagnosis';

const meanings = new Map(causes.map(({ word, meaning }) => [word, meaning]));

/** A cause in the words of a person on site. */
export const meaningOf = (word: CauseWord): string => meanings.get(word) ?? word;
