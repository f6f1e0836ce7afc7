/**
 * What may not reach a terminal as it is: control characters (escape sequences start with one), invisible and
 * direction-turning characters, line and paragraph separators, halves of surrogate pairs.
 */
export const unsafe = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu;
