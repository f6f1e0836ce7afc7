import type { Site } from 'beamkeep/site';
import type { BeamWork } from '../../bench/recordTold.js';
import type { NumberedWork } from '../../sheet/workAbove.js';
import { placesLeft } from '../aim/placesLeft.js';
import { structureTyped } from '../aim/structureTyped.js';
import { chosenBeam } from '../chosenBeam.js';
import { testAsked } from '../proof/testAsked.js';

/** What the cells above hold of each beam; a cell without its file holds nothing yet. */
export const workOf = (work: readonly NumberedWork[], site: Site): BeamWork[] =>
  work.flatMap(({ number, cell }) => workIn(number, cell, site) ?? []);

function workIn(number: number, cell: NumberedWork['cell'], site: Site): BeamWork | null {
  if (cell.kind === 'findings') return null;
  const beam = chosenBeam(site, cell.settings.beam);
  if (cell.kind === 'aim') {
    const { scan, left, structure } = cell.settings;
    return (
      scan && {
        number,
        kind: 'aim',
        beam,
        scan,
        left: placesLeft(left),
        structure: structureTyped(structure).structure,
      }
    );
  }
  if (cell.kind === 'covered') {
    const { test } = cell.settings;
    return test && { number, kind: 'covered', beam, test };
  }
  const asked = testAsked(cell.settings, beam);
  return asked && { number, kind: 'proof', beam, asked };
}
