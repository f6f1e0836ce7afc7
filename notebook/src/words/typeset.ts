/** A sentence of the library, which writes with the marks of a keyboard, with those of print: quotes, apostrophes, minus. */
export const typeset = (sentence: string): string =>
  sentence
    .replace(/"([^"]*)"/g, '“$1”')
    .replace(/'/g, '’')
    .replace(/(^|[\s(])-(?=\d)/g, '$1−');
