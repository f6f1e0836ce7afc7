import { wrap } from '../wrap.js';

/** Sentences, one a paragraph. */
export const sentencesText = (sentences: readonly string[], width: number): string =>
  sentences.map((sentence) => wrap(sentence, width, '  ', '  ')).join('\n');

/** What to do, in order; nothing where there is nothing to do. */
export const actionsText = (actions: readonly string[], width: number): string[] =>
  actions.length === 0
    ? []
    : [['What to do', ...actions.map((action, at) => wrap(action, width, `  ${at + 1}. `, '     '))].join('\n')];
