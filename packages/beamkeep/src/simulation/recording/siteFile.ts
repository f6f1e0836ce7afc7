import type { BeamPlan, Scenario } from '../scenario.js';
import { decimals } from './unit.js';

const iso = (instant: number) => `${new Date(instant).toISOString().slice(0, 19)}Z`;
const rounded = (value: number, places: number) => Number(value.toFixed(places));

/** The site file of a scenario as an object, without the keys that its people did not know or bother to write. */
export function siteFile(scenario: Scenario): Record<string, unknown> {
  const { recording, untold } = scenario;
  const head: Record<string, unknown> = {
    format: 'beamkeep-site/1',
    name: `${scenario.name} (invented)`,
    timeZone: scenario.timeZone,
    latitude: rounded(scenario.latitude, 2),
    longitude: rounded(scenario.longitude, 2),
    ...(typeof recording.timeColumn === 'string' ? {} : { timeColumn: recording.timeColumn }),
    ...(recording.clock === 'day-first' || recording.clock === 'month-first' ? { timeFormat: recording.clock } : {}),
    ...(recording.sampling === 'regular' ? {} : { sampling: recording.sampling }),
  };
  for (const key of untold) delete head[key];
  const visits = scenario.visits.map(({ time, until, beam, work }) => ({
    time: iso(time),
    ...(until === undefined ? {} : { until: iso(until) }),
    ...(beam === undefined ? {} : { beam }),
    work,
  }));
  return {
    ...head,
    beams: scenario.beams.map((beam) => beamEntry(scenario, beam)),
    ...(visits.length > 0 ? { visits } : {}),
  };
}

function beamEntry(scenario: Scenario, beam: BeamPlan): Record<string, unknown> {
  const { unit, cleanAir, covered, step } = beam;
  const coveredReading =
    unit === 'decibels'
      ? rounded(cleanAir + 10 * Math.log10(Math.max(covered, 1e-4)), 2)
      : unit === 'obscuration'
        ? rounded(cleanAir + 100 * (1 - covered), 2)
        : rounded(cleanAir * covered, Math.max(2, decimals(step)));
  const entry: Record<string, unknown> = {
    id: beam.id,
    layout: beam.layout,
    separation: beam.separation,
    height: beam.height,
    bearing: Math.round(beam.bearing),
    tilt: rounded(beam.tilt, 1),
    halfAngle: rounded(beam.halfAngle, 2),
    signalColumn: beam.column,
    signalUnit: unit,
    cleanAir,
    covered: coveredReading,
    ...(scenario.temperature ? { temperatureColumn: scenario.temperature.column } : {}),
    ...(scenario.humidity ? { humidityColumn: scenario.humidity.column } : {}),
    ...(scenario.plant ? { plantColumn: scenario.plant.column } : {}),
    ...(beam.gainControl?.column ? { gainColumn: beam.gainControl.column } : {}),
    ...(beam.gainControl
      ? { compensation: { limitDecibels: beam.gainControl.limitDecibels } }
      : { compensation: 'none' }),
    alarmThreshold: beam.alarmThreshold,
    alarmDelay: beam.alarmDelay,
    faultThreshold: beam.faultThreshold,
    faultDelay: beam.faultDelay,
    latching: true,
  };
  for (const key of beam.untold) delete entry[key];
  return entry;
}
