import { equipmentObscuration } from '../../response/index.js';
import type { Beam } from '../../site/index.js';
import type { Excursion, Excursions } from './excursions.js';

/** How much light a stay took, of what came before it [%]: what a filter or a cover does, dirt and residue left out. */
export function lossTaken({ held }: Pick<Excursion, 'held'>, { clean }: Pick<Excursions, 'clean'>, beam: Beam): number {
  const dark = 1 - equipmentObscuration(beam, 0) / 100;
  const light = (obscuration: number) => 1 - obscuration / 100 - dark;
  return 100 * (1 - light(held) / light(clean));
}
