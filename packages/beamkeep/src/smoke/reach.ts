import { ceilingJetReach, layerShape } from '../numbers/index.js';
import type { SmokeScene } from './beam/smokeOnBeam.js';
import { jetDepth } from './ceiling/ceilingJet.js';
import { flameHeight } from './plume/flameHeight.js';

/** What every result of the smoke room leaves out, in sentences to be printed beside it. */
export const leftOut: readonly string[] = [
  'The fire is a wager: real ones start slowly, flare, starve, and stand where nobody expected them.',
  'Still air: ventilation, heaters, doors, wind, vents and sprinklers are left out, and so are racks, joists and slopes.',
  'Smoke is even in plume, jet and layer; real smoke dithers, and a delay that starts afresh at every gap is later than shown.',
  'Soot yields differ by a factor of two to five between sources, and extinction was measured in red light, not at the beam.',
  "The detector's own filtering, drift and compensation are not in it.",
];

/** Who decides: to be printed beside every plan, curve and trade-off. */
export const whoDecides =
  "No promise: design and settings belong to the local code, the authority, the maker's instructions and licensed people.";

/**
 * Where a scene lies outside the data from which its laws were drawn, in sentences; empty where it does not.
 *
 * @param scene fire, hall and beam
 * @param seconds how long it is watched [s]: the flames grow until then
 */
export function outOfReach(scene: SmokeScene, seconds: number): string[] {
  const { fire, ceiling, area, beam, diameter } = scene;
  const told: string[] = [];
  const { lowest, highest, radius } = ceilingJetReach;
  if (ceiling < lowest.value || ceiling > highest.value) {
    told.push(
      `Ceiling ${ceiling} m: the laws of the ceiling jet were drawn from ${lowest.value} to ${highest.value} m (${lowest.seen}).`,
    );
  }
  if (beam.aside > radius.value * ceiling) {
    told.push(
      `Fire ${beam.aside} m aside: beyond ${radius.value} ceiling heights the jet has no data and counts as nothing.`,
    );
  }
  const shape = area / ceiling ** 2;
  if (Number.isFinite(area) && (shape < layerShape.least.value || shape > layerShape.most.value)) {
    told.push(
      `Floor area ${area} m² under ${ceiling} m: a layer fills evenly where area over height squared is ${layerShape.least.value} to ${layerShape.most.value} (${layerShape.least.seen}); here it is ${Number(shape.toPrecision(2))}.`,
    );
  }
  const below = ceiling - beam.height;
  if (below > jetDepth(ceiling, radius.value * ceiling)) {
    told.push(
      `The beam hangs ${Number(below.toFixed(2))} m below the ceiling, lower than a ceiling jet is deep: smoke of a fire beside it comes only when the layer has sunk so far.`,
    );
  }
  const end = Math.min(seconds, fire.until);
  if (flameHeight(fire.heat(end), diameter) >= beam.height) {
    told.push(`The flames reach the beam within ${end} s: what it sees then is flame, and no law here says how much.`);
  }
  if (fire.fuel.kind === 'smouldering') {
    told.push('A smouldering fire lifts little air: draughts carry its smoke, and times are a guess.');
  }
  return told;
}
