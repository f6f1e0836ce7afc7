import eventsUrl from '../../../datasets/tram-depot/events.csv?url';
import logUrl from '../../../datasets/tram-depot/log.csv.gz?url';
import siteUrl from '../../../datasets/tram-depot/site.json?url';
import type { LogFile } from '../bench/reading.js';
import type { SmallText } from '../sheet/sheet.js';

/** The demo: a tram depot that is invented, with an invented log. */
export interface Demo {
  readonly files: readonly LogFile[];
  readonly site: SmallText;
  readonly events: SmallText;
}

let fetching: Promise<Demo> | undefined;

/** The demo's files, fetched from beside the page when they are first asked for. */
export function demo(): Promise<Demo> {
  fetching ??= fetched().catch((error: unknown) => {
    fetching = undefined;
    throw error;
  });
  return fetching;
}

async function fetched(): Promise<Demo> {
  const [log, site, events] = await Promise.all(
    [logUrl, siteUrl, eventsUrl].map((url) => fetch(new URL(url, document.baseURI))),
  );
  if (!log?.ok || !site?.ok || !events?.ok) throw new Error('the demo could not be loaded from beside this page');
  return {
    files: [{ name: 'tram-depot/log.csv.gz', blob: await log.blob() }],
    site: { name: 'tram-depot/site.json', text: await site.text() },
    events: { name: 'tram-depot/events.csv', text: await events.text() },
  };
}
