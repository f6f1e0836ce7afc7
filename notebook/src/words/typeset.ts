/**
 * A sentence of the library, which writes with the marks of a keyboard, with those of print: quotes, apostrophes, minus; a
 * number and its unit are not parted at a line's end.
 */
export const typeset = (sentence: string): string =>
  sentence
    .replace(/"([^"]*)"/g, '“$1”')
    .replace(/'/g, '’')
    .replace(/(^|[\s(])-(?=\d)/g, '$1−')
    .replace(/(\d) (%|dB|[dhms]|min|mm|days?|nights?|times|samples)(?!\w)/g, '$1\u00a0$2');
