import type { BeamRecord } from 'beamkeep/columns';
import type { Beam, Site } from 'beamkeep/site';

/** A setting of the site in words, and what it says. */
export type ReadingSetting = [what: string, says: string];

const ofSite = ['timeZone', 'timeColumn', 'timeFormat', 'sampling'] as const satisfies readonly (keyof Site)[];
const ofBeam = [
  'signalColumn',
  'signalUnit',
  'cleanAir',
  'covered',
  'temperatureColumn',
  'humidityColumn',
  'gainColumn',
  'plantColumn',
] as const satisfies readonly (keyof Beam)[];
const thresholds = ['alarmThreshold', 'faultThreshold'] as const satisfies readonly (keyof Beam)[];

/**
 * What of a site the reading of its log rests on: changed, the log must be read anew. Thresholds are among it where
 * minutes were condensed, for a minute in which a beam passes one keeps its samples.
 *
 * @param site the site
 * @param records what was read with it
 */
export function readingSettings(site: Site, records: readonly BeamRecord[]): ReadingSetting[] {
  const condensed = records.some(({ trace }) => trace.count.some((many) => many > 1));
  const keys = condensed ? [...ofBeam, ...thresholds] : ofBeam;
  return [
    ...ofSite.map((key): ReadingSetting => [key, said(site[key])]),
    ...site.beams.flatMap((beam) => keys.map((key): ReadingSetting => [`${beam.id}: ${key}`, said(beam[key])])),
  ];
}

const said = (value: unknown): string => (value === undefined ? 'left out' : JSON.stringify(value));

/** The first setting that says something else than before; undefined where all is as it was. */
export function changedReading(
  before: readonly ReadingSetting[],
  now: readonly ReadingSetting[],
): { readonly what: string; readonly before: string; readonly now: string } | undefined {
  const [old, fresh] = [new Map(before), new Map(now)];
  for (const what of new Set([...old.keys(), ...fresh.keys()])) {
    const [was, is] = [old.get(what), fresh.get(what)].map((value) => value ?? 'no such beam');
    if (was !== undefined && is !== undefined && was !== is) return { what, before: was, now: is };
  }
  return undefined;
}
