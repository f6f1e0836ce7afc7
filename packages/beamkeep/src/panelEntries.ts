import type { BeamRecord, PanelEntry } from './columns/index.js';
import type { EventJson, EventsJson, JoinableList } from './diagnose.js';
import type { BeamDiagnosis, Finding } from './diagnosis/index.js';
import { parsePanelList } from './log/index.js';
import { clockWords, type JoinedEvent, joinEvents } from './moments/index.js';
import type { Site } from './site/index.js';

/**
 * Reads a fire panel's list for `diagnose`, which joins each entry to what the log shows then: a header line with
 * `time`, `beam` and `what` in any order, then a line an event. Cells are separated by `,` `;` or a tab; times are
 * written as in a log, without an offset in the site's zone. An empty beam, or no such column, concerns all beams.
 *
 * @param bytes the whole file, or its text
 * @param file its name, for errors and notes
 * @param site its zone and its beams; its `timeFormat` decides where the list does not tell day from month
 * @returns what could be read; lines of other devices and broken lines are told under `notes`
 * @throws UsageError where this is no such list, or no line of it can be read
 * @example panelEntries('time,beam,what\n2027-03-16T06:42:30Z,B3,fire\n', 'events.csv', site).entries.length // 1
 */
export function panelEntries(
  bytes: Uint8Array | string,
  file: string,
  site: Pick<Site, 'timeZone' | 'beams' | 'timeFormat'>,
): JoinableList {
  const list = parsePanelList(bytes, file, site);
  return {
    ...list,
    joined: (diagnoses, records, of, clockOffsetSeconds) =>
      eventsJson(list.entries, diagnoses, records, of, clockOffsetSeconds),
  };
}

function eventsJson(
  entries: readonly PanelEntry[],
  diagnoses: readonly BeamDiagnosis[],
  records: readonly BeamRecord[],
  site: Site,
  clockOffsetSeconds: number | undefined,
): EventsJson {
  const known = records.map((record) => ({
    record,
    findings: diagnoses.find(({ id }) => id === record.id)?.findings ?? [],
  }));
  const given = clockOffsetSeconds === undefined ? undefined : 1000 * clockOffsetSeconds;
  const { clock, events } = joinEvents(entries, known, site, given);
  const seconds = (ms: number | undefined): number | null => (ms === undefined ? null : Math.round(ms) / 1000);
  const offset = seconds(clock.offset);
  return {
    clock: {
      offsetSeconds: offset,
      source: clock.source,
      matched: clock.matched,
      of: clock.of,
      spreadSeconds: seconds(clock.spread) ?? 0,
      estimateSeconds: seconds(clock.estimate?.offset),
      words: clockWords(clock),
    },
    events: events.map((event) => eventJson(event, offset)),
  };
}

function eventJson(
  { entry, at, beam, state, obscuration, finding, words }: JoinedEvent<Finding>,
  clockOffsetSeconds: number | null,
): EventJson {
  return {
    time: iso(entry.time),
    beam: entry.beam ?? null,
    what: entry.what,
    at: iso(at),
    clockOffsetSeconds,
    state: state ?? null,
    obscuration: Number.isNaN(obscuration) ? null : Number(obscuration.toFixed(2)),
    finding: finding === undefined ? null : { beam, cause: finding.cause, start: iso(finding.start) },
    words,
  };
}

const iso = (instant: number): string => new Date(instant).toISOString();
