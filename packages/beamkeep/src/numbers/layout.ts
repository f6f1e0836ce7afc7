import type { Sourced } from './sourced.js';

/*
 * Where beams may run, by rule set. The local code and the maker's instructions decide; every figure here can be
 * replaced by the user's own.
 */

const digest = 'BS 5839-1:2017, as digested by a fire consultancy';
const clause22 = 'BS 5839-1:2017, clause 22';

/** United Kingdom. */
export const bs5839 = {
  ceiling: { value: 25, unit: 'm', source: digest, edition: '2017', seen: 'read', note: 'in general' },
  ceilingAtMost: {
    value: 40,
    unit: 'm',
    source: digest,
    edition: '2017',
    seen: 'read',
    note: 'for response at 35 % attenuation or less (from memory, Table 3)',
  },
  sensitive: {
    value: 35,
    unit: '%',
    source: 'BS 5839-1:2017, Table 3',
    clause: 'Table 3',
    edition: '2017',
    seen: 'from memory',
    note: 'greatest threshold of a beam under a ceiling above 25 m',
  },
  fromWall: {
    value: 0.5,
    unit: 'm',
    source: digest,
    edition: '2017',
    seen: 'read',
    note: 'except within 0.5 m of the ends',
  },
  aboveWalkway: { value: 2.7, unit: 'm', source: digest, edition: '2017', seen: 'read', note: 'where people pass' },
  separation: { value: 100, unit: 'm', source: digest, edition: '2017', seen: 'read', note: 'digest of 2016' },
  toSide: { value: 7.5, unit: 'm', source: clause22, clause: '22', edition: '2017', seen: 'from memory' },
  betweenBeams: { value: 15, unit: 'm', source: clause22, clause: '22', edition: '2017', seen: 'from memory' },
  belowCeilingLeast: { value: 0.025, unit: 'm', source: clause22, clause: '22', edition: '2017', seen: 'from memory' },
  belowCeilingMost: { value: 0.6, unit: 'm', source: clause22, clause: '22', edition: '2017', seen: 'from memory' },
  apexWidening: {
    value: 1,
    unit: '%/degree',
    source: clause22,
    clause: '22',
    edition: '2017',
    seen: 'from memory',
    note: 'of the width at an apex; at most 25 %',
  },
  apexWideningMost: {
    value: 25,
    unit: '%',
    source: clause22,
    clause: '22',
    edition: '2017',
    seen: 'from memory',
  },
  lowerRowReach: {
    value: 12.5,
    unit: '%',
    source: clause22,
    clause: '22',
    edition: '2017',
    seen: 'from memory',
    note: 'of the height of an extra beam above the highest likely seat of fire, to either side',
  },
} satisfies Record<string, Sourced>;

const smoothCeiling = 'NFPA 72, 17.7.3.7 and its annex, guide for smooth ceilings';

/** United States. */
export const nfpa72 = {
  betweenBeams: {
    value: 18.288,
    unit: 'm',
    source: smoothCeiling,
    clause: '17.7.3.7',
    edition: '2010 to 2019',
    seen: 'from memory',
    note: "the rule is to follow the maker's published instructions (read)",
  },
  toSide: {
    value: 9.144,
    unit: 'm',
    source: smoothCeiling,
    clause: '17.7.3.7',
    edition: '2010 to 2019',
    seen: 'from memory',
    note: "the rule is to follow the maker's published instructions (read)",
  },
} satisfies Record<string, Sourced>;

/** United States, peaked ceilings. */
export const nfpa72Peak = {
  value: 0.9144,
  unit: 'm',
  source: 'NFPA 72, peaked ceilings, as summarised in an open training outline (3 ft)',
  seen: 'read',
  note: 'a row of detectors at or within this distance of the peak first; the others by their horizontal projection',
} satisfies Sourced;

const examination = 'GB 50116-2013, as quoted in examination keys';

const highHalls = 'GB 50116-2013, 12.4, spaces higher than 12 m';

/** China. */
export const gb50116 = {
  belowCeilingLeast: { value: 0.3, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  belowCeilingMost: { value: 1, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  aboveFloor: { value: 20, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  betweenBeams: { value: 14, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  toSideLeast: { value: 0.5, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  toSideMost: { value: 7, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  separation: { value: 100, unit: 'm', source: examination, clause: '6.2.15', edition: '2013', seen: 'read' },
  lowerRowsAbove: { value: 12, unit: 'm', source: highHalls, clause: '12.4.3', edition: '2013', seen: 'from memory' },
  secondLowerRowAbove: {
    value: 16,
    unit: 'm',
    source: highHalls,
    clause: '12.4.3',
    edition: '2013',
    seen: 'from memory',
    note: 'up to 26 m',
  },
  lowerRow: {
    value: 6.5,
    range: [6, 7],
    unit: 'm',
    source: highHalls,
    clause: '12.4.3',
    edition: '2013',
    seen: 'from memory',
    note: 'above the floor; value: middle of the range',
  },
  secondLowerRow: {
    value: 11.5,
    range: [11, 12],
    unit: 'm',
    source: highHalls,
    clause: '12.4.3',
    edition: '2013',
    seen: 'from memory',
    note: 'above the floor; value: middle of the range',
  },
} satisfies Record<string, Sourced>;

const advisory = 'Tariff Advisory Committee (India), rules text';

/** India. */
export const tariffAdvisory = {
  betweenBeams: { value: 18, unit: 'm', source: advisory, clause: '6.2', seen: 'read' },
  toSide: {
    value: 9,
    unit: 'm',
    source: advisory,
    clause: '6.2',
    seen: 'read',
    note: 'half of 18 m to a parallel wall',
  },
  leastHeight: {
    value: 10,
    unit: 'm',
    source: advisory,
    clause: '6.2',
    seen: 'read',
    note: 'beams or air sampling from here',
  },
  greatestHeight: { value: 25, unit: 'm', source: advisory, clause: '6.2', seen: 'read' },
} satisfies Record<string, Sourced>;

const russia = 'SP 5.13130 and SP 484, linear smoke detectors';

/** Russia. */
export const sp484 = {
  betweenBeams: { value: 9, unit: 'm', source: russia, seen: 'from memory' },
  toSide: { value: 4.5, unit: 'm', source: russia, seen: 'from memory' },
} satisfies Record<string, Sourced>;

/** Distance below the ceiling at which a plan puts a beam where its rule set names none. */
export const placedBelowCeiling = {
  value: 0.3,
  unit: 'm',
  source: 'within what BS 5839-1 and GB 50116 both allow, and off the still air right under a roof',
  seen: 'own choice',
} satisfies Sourced;
