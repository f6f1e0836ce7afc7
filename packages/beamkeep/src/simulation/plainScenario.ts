import { quietElectronics } from './electronics.js';
import { gaussianLobe } from './lobe.js';
import { plainRecording } from './recording/recording.js';
import type { BeamPlan, Scenario } from './scenario.js';

/**
 * One healthy beam in a hall near Lisbon, a sample a minute: a base for scenarios written by hand.
 *
 * @param changes of the scenario
 * @param beam changes of its only beam
 * @example plainScenario({ samples: 1440 }, { effects: [{ effect: 'knock', time, turn: [0.4, 0], settles: 0, leaves: 0 }] })
 */
export function plainScenario(changes: Partial<Scenario> = {}, beam: Partial<BeamPlan> = {}): Scenario {
  return {
    name: 'Tram depot, hall',
    kind: 'single',
    timeZone: 'Europe/Lisbon',
    latitude: 41.1,
    longitude: -8.6,
    climate: { mean: 15, season: 5.5, daily: 9, fronts: 2.5, cloud: 0.45, mood: 2, dryness: 5 },
    calendar: { days: { week: [1, 2, 3, 4, 5] }, opens: 7, closes: 16, idle: 0 },
    start: Date.UTC(2027, 0, 4),
    samples: 30 * 1440,
    intervalSeconds: 60,
    solarGain: 0.02,
    thermometerLag: 1,
    recording: plainRecording,
    visits: [],
    untold: [],
    ...changes,
    beams: changes.beams ?? [
      {
        id: 'B1',
        layout: 'reflective',
        separation: 50,
        height: 8,
        bearing: 90,
        tilt: 0,
        halfAngle: 0.7,
        lobe: gaussianLobe,
        offset: [0, 0],
        column: 'b1',
        unit: 'percent',
        cleanAir: 100,
        covered: 0,
        ceiling: 1.6,
        step: 0.01,
        electronics: quietElectronics(0.001),
        alarmThreshold: 35,
        faultThreshold: 90,
        alarmDelay: 10,
        faultDelay: 10,
        effects: [],
        untold: [],
        ...beam,
      },
    ],
  };
}
