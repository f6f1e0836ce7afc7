import type { Site } from 'beamkeep/site';
import { Choice } from '../parts/Choice.js';

interface BeamChoiceProps {
  readonly site: Site;
  readonly beam: string;
  readonly onBeam: (id: string) => void;
}

/** Which beam of the site a test is of. */
export const BeamChoice = ({ site, beam, onBeam }: BeamChoiceProps) => (
  <Choice legend="Beam" options={site.beams.map(({ id }) => [id, id] as const)} value={beam} onChange={onBeam} />
);
