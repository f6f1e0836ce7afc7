import type { Site } from 'beamkeep/site';
import { logAbove } from '../sheet/edits.js';
import { demo } from '../state/demo.js';
import { helper } from '../state/helper.js';
import { sheet } from '../state/store.js';
import { type Answer, useAnswer } from './useAnswer.js';

/** The site of the nearest log cell above a cell; its log need not be there yet, as on the commissioning day. */
export function useSite(cell: string): Answer<Site> {
  const { log, site } = logAbove(sheet.value, cell)?.settings ?? { log: undefined, site: null };
  const ofDemo = site === null && log?.from === 'demo';
  const ask = async (): Promise<Site> => {
    const { name, text } = site ?? (await demo()).site;
    return helper().site(text, name);
  };
  return useAnswer(site || ofDemo ? ask : null, [site, ofDemo]);
}
