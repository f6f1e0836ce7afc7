import { stageCautions } from 'beamkeep/commissioning';
import { wrap } from '../wrap.js';

/** What to mind at a stage of the commissioning day, one paragraph a caution. */
export const cautionsText = (stage: Parameters<typeof stageCautions>[0], width: number): string =>
  ['Mind', ...stageCautions(stage).map(({ words }) => wrap(words, width, '  - ', '    '))].join('\n');
