import type { Visit } from '../site/index.js';

/**
 * Instants at which a beam was reset [ms], rising. A reset that lasts counts at its start and at its end: a signal that
 * came in between was seen by the people at the panel.
 *
 * @param visits of the site
 * @param id of the beam; visits that name no beam concern all
 */
export const resetsOf = (visits: readonly Visit[], id: string): number[] =>
  visits
    .filter(({ work, beam }) => work === 'reset' && (beam === undefined || beam === id))
    .flatMap(({ time, until }) => (until === undefined ? [time] : [time, until]))
    .sort((a, b) => a - b);
