import type { Site } from 'beamkeep/site';
import type { ComponentChildren } from 'preact';
import { useSite } from './useSite.js';

/** Shows its content once the site above is known; until then what is missing, in words. */
export function NeedsSite({ cell, children }: { cell: string; children: (site: Site) => ComponentChildren }) {
  const site = useSite(cell);
  switch (site.is) {
    case 'told':
      return <>{children(site.told)}</>;
    case 'asking':
      return <p class="empty">Waits for the site above.</p>;
    case 'refused':
      return (
        <p class="empty">Waits for a site file that can be used: the log cell above says what is wrong with it.</p>
      );
    case 'nothing':
      return (
        <p class="empty">
          This cell reads the site of the nearest log cell above it, and there is none: drop a site file (JSON) there. A
          log is not needed for it.
        </p>
      );
  }
}
