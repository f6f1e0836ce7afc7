/** Reads words with commas between; "none" is no word at all. */
export const wordList = (text: string): string[] =>
  text === 'none'
    ? []
    : text
        .split(',')
        .map((word) => word.trim())
        .filter((word) => word !== '');
