import type { Site } from 'beamkeep/site';

/** The beam that a cell asks about: the chosen one where the site has it, else the first. */
export const chosenBeam = ({ beams }: Pick<Site, 'beams'>, beam: string | null): string =>
  (beams.find(({ id }) => id === beam) ?? beams[0])?.id ?? '';
