import { mirrorImages } from '../../numbers/index.js';
import { type Air, hallAir } from '../air.js';
import { type Plume, type PlumeFire, plumeAt } from './heskestad.js';

/** Where a fire stands. */
export const places = ['free', 'wall', 'corner'] as const;
/** One of `places`. */
export type Place = (typeof places)[number];

/**
 * The plume of a fire that stands free, at a wall or in a corner: less air comes in, so it is warmer and thicker.
 *
 * With its mirror images it is a free fire of two or four times the heat and area; one half or a quarter of its flow is
 * real. Entrainment is 0.63 (wall) or 0.40 (corner) of a free fire's.
 *
 * Source: CFAST Technical Reference Guide, Plume Entrainment.
 */
export function plumeBeside(place: Place, fire: PlumeFire, height: number, air: Air = hallAir): Plume {
  if (place === 'free') return plumeAt(fire, height, air);
  const images = mirrorImages[place].value;
  const mirrored = plumeAt(
    { ...fire, heat: images * fire.heat, diameter: Math.sqrt(images) * fire.diameter },
    height,
    air,
  );
  return { ...mirrored, massFlow: mirrored.massFlow / images };
}
