export { bearsOnResponse, unitSigns } from './assumed.js';
export { instantOf, type WrittenTime } from './instantOf.js';
export { isZone } from './isZone.js';
export { coveredShare, linearReading, readingOf } from './linearReading.js';
export { nearest } from './nearest.js';
export { parseSite } from './parseSite.js';
export { quoted } from './quoted.js';
export { readJson } from './readJson.js';
export {
  type Beam,
  type Compensation,
  type Layout,
  layouts,
  type Sampling,
  type SignalUnit,
  type Site,
  samplings,
  signalUnits,
  type TimeFormat,
  timeFormats,
  type Visit,
  type Work,
  works,
} from './site.js';
export { cleanAirDefaults, siteDefaults } from './siteDefaults.js';
export {
  beamKeys,
  compensationKeys,
  type Limits,
  type SiteKey,
  type SiteSection,
  siteKeys,
  topKeys,
  visitKeys,
} from './siteKeys.js';
export { limitsInWords, wanted } from './wanted.js';
