import { assumedOf } from './assumed.js';
import { checkKeys } from './checkKeys.js';
import { checkReadings } from './checkReadings.js';
import { checkValues } from './checkValues.js';
import { given } from './given.js';
import { instantOf } from './instantOf.js';
import { placeOfBeam, placeOfVisit, type Refuse, refusing } from './place.js';
import { quoted } from './quoted.js';
import { readJson } from './readJson.js';
import type { Beam, Site, Visit } from './site.js';
import { cleanAirDefaults, siteDefaults } from './siteDefaults.js';
import { visitKeys } from './siteKeys.js';
import { inWords, wanted } from './wanted.js';
import type { BeamAsWritten, SiteAsWritten, VisitAsWritten } from './written.js';

/**
 * Reads a site file: checks it, fills in every default and names those that bear on safety.
 *
 * @param input the JSON text, or the value that it holds
 * @param fileName named in errors
 * @returns the site, with `assumed` for each beam; a clean-air reading that only the log can tell stays undefined
 * @throws UsageError for anything that cannot be used, naming file, place, key, what was found and what to do
 * @example parseSite('{ "beams": [{ "id": "B1", "layout": "reflective", "separation": 62 }] }').timeZone // UTC
 */
export function parseSite(input: unknown, fileName = 'site file'): Site {
  const value = typeof input === 'string' ? readJson(input, fileName) : input;
  const refuse = refusing(fileName);
  return siteFrom(checkValues(checkKeys(value, refuse), refuse), refuse);
}

function siteFrom(site: SiteAsWritten, refuse: Refuse): Site {
  if ((site.latitude === undefined) !== (site.longitude === undefined))
    refuse('', 'latitude and longitude belong together: give both or neither.');
  checkIds(site.beams, refuse);
  const timeZone = site.timeZone ?? siteDefaults.timeZone;
  const { name, latitude, longitude, timeColumn, timeFormat, sampling } = site;
  return {
    ...given({ latitude, longitude, timeColumn, timeFormat }),
    name: name ?? siteDefaults.name,
    timeZone,
    sampling: sampling ?? siteDefaults.sampling,
    beams: site.beams.map((beam, row) => beamFrom(beam, placeOfBeam(row, beam), refuse)),
    visits: (site.visits ?? []).map((visit, row) => visitFrom(visit, placeOfVisit(row), site, timeZone, refuse)),
  };
}

function checkIds(beams: readonly BeamAsWritten[], refuse: Refuse): void {
  const rows = new Map<string, number>();
  for (const [row, { id }] of beams.entries()) {
    const first = rows.get(id);
    if (first !== undefined)
      refuse(`beams[${row}]`, `the id ${quoted(id)} is already that of beams[${first}]: give each beam its own.`);
    rows.set(id, row);
  }
}

function beamFrom(written: BeamAsWritten, place: string, refuse: Refuse): Beam {
  const signalUnit = written.signalUnit ?? siteDefaults.signalUnit;
  const beam: Omit<Beam, 'assumed'> = {
    ...given({ ...written, cleanAir: written.cleanAir ?? cleanAirDefaults[signalUnit] }),
    signalUnit,
    wavelength: written.wavelength ?? siteDefaults.wavelength,
    coveredSubtracted: written.coveredSubtracted ?? siteDefaults.coveredSubtracted,
    compensation: written.compensation ?? siteDefaults.compensation,
    alarmThreshold: written.alarmThreshold ?? siteDefaults.alarmThreshold,
    faultThreshold: written.faultThreshold ?? siteDefaults.faultThreshold,
    alarmDelay: written.alarmDelay ?? siteDefaults.alarmDelay,
    faultDelay: written.faultDelay ?? siteDefaults.faultDelay,
    latching: written.latching ?? siteDefaults.latching,
    hysteresis: written.hysteresis ?? siteDefaults.hysteresis,
  };
  checkThresholds(beam, written, place, refuse);
  checkReadings(beam, place, refuse);
  return { ...beam, assumed: assumedOf(written, beam) };
}

function checkThresholds(beam: Omit<Beam, 'assumed'>, written: BeamAsWritten, place: string, refuse: Refuse): void {
  const { alarmThreshold, faultThreshold, hysteresis } = beam;
  const byDefault = (key: 'alarmThreshold' | 'faultThreshold') => (written[key] === undefined ? ', by default' : '');
  if (alarmThreshold >= faultThreshold)
    refuse(
      place,
      `alarmThreshold (${alarmThreshold} %${byDefault('alarmThreshold')}) must lie below faultThreshold ` +
        `(${faultThreshold} %${byDefault('faultThreshold')}): give both as set in the equipment.`,
    );
  if (hysteresis >= alarmThreshold)
    refuse(
      place,
      `hysteresis is ${hysteresis}, not below alarmThreshold (${alarmThreshold}): an alarm could never be over.`,
    );
}

function visitFrom(
  written: VisitAsWritten,
  place: string,
  { beams }: SiteAsWritten,
  timeZone: string,
  refuse: Refuse,
): Visit {
  const { beam, work } = written;
  const time = readTime('time', written.time);
  const until = written.until === undefined ? undefined : readTime('until', written.until);
  if (until !== undefined && until < time)
    refuse(place, `until (${quoted(written.until)}) is before time (${quoted(written.time)}): exchange or mend them.`);
  const ids = beams.map(({ id }) => id);
  if (beam !== undefined && !ids.includes(beam))
    refuse(place, `beam is ${quoted(beam)}, which is no beam of this site: use ${inWords(ids.map(quoted))}.`);
  return { time, work, ...given({ until, beam }) };

  function readTime(key: 'time' | 'until', text: string): number {
    const read = instantOf(text, timeZone);
    if ('instant' in read) return read.instant;
    return read.why === 'clock-change'
      ? refuse(
          place,
          `${key} is ${quoted(text)}: the change of the clock in ${timeZone} leaves that hour out or brings it twice: ` +
            'add the offset, as in "+01:00".',
        )
      : refuse(place, `${key} is ${quoted(text)}: ${wanted(visitKeys[key])}.`);
  }
}
