import type { CommissioningDay } from 'beamkeep/commissioning';
import type { SmallText } from '../sheet/sheet.js';

/*
 * The commissioning day of the demo: invented, as the depot is. Its files are fetched from beside the page when they
 * are asked for.
 */

const urls = import.meta.glob<string>('../../../datasets/tram-depot/commissioning/*.{csv,json}', {
  query: '?url',
  import: 'default',
});

/** A file of the day, by its name in the folder. */
export async function dayFile(name: string): Promise<SmallText> {
  const url = await urls[`../../../datasets/tram-depot/commissioning/${name}`]?.();
  const file = url === undefined ? undefined : await fetch(new URL(url, document.baseURI));
  if (!file?.ok) throw new Error(`${name} could not be loaded from beside this page`);
  return { name, text: await file.text() };
}

/** The day itself. */
export const demoDay = async (): Promise<CommissioningDay> => JSON.parse((await dayFile('day.json')).text);
