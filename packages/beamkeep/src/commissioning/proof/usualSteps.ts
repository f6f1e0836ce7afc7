import { crossings, percentToLevel } from '../../attenuation/index.js';
import type { Beam } from '../../site/index.js';
import type { ProofSheet } from './step.js';

/**
 * A proof sheet that suits most beams: a filter that must not alarm, a slow cover that must, reset, a blocked beam,
 * and the signal to the panel.
 *
 * @param beam of the site
 *
 * The filter takes half of the alarm threshold, so that neither dirt nor a hand makes it doubtful.
 */
export function usualSteps(beam: Pick<Beam, 'id' | 'layout' | 'alarmThreshold' | 'latching'>): ProofSheet {
  const quiet = percentToLevel(beam.alarmThreshold / 2) ** (1 / crossings(beam.layout));
  return {
    format: 'beamkeep-proof-sheet/1',
    beam: beam.id,
    steps: [
      { do: 'filter', transmittance: Number(quiet.toFixed(2)) },
      { do: 'uncover' },
      { do: 'cover-slowly' },
      { do: 'uncover' },
      ...(beam.latching ? [{ do: 'reset' } as const] : []),
      { do: 'cover-at-once' },
      { do: 'uncover' },
      { do: 'panel-alarm' },
      { do: 'reset' },
    ],
  };
}
