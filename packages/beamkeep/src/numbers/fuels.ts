import type { Sourced } from './sourced.js';

const handbook = 'SFPE Handbook, appendix of fuel properties (after Tewarson)';

/**
 * Soot yield [g of soot a g of fuel] and heat of combustion [kJ/g], flaming and well ventilated.
 *
 * The same fuel spans a factor of 2.5 (heptane) to 5 (propylene) between sources: show a range, not a number.
 */
export const fuels = {
  polyurethaneFoam: {
    sootYield: {
      value: 0.131,
      unit: 'g/g',
      source: 'SFPE Handbook, appendix 3, Table A.39 (foam GM21), as quoted in a public repository',
      edition: '5th edition',
      seen: 'read',
    },
    heatOfCombustion: {
      value: 17.8,
      unit: 'kJ/g',
      source: 'SFPE Handbook, appendix 3, Table A.39 (foam GM21), as quoted in a public repository',
      edition: '5th edition',
      seen: 'read',
      note: 'chemical heat; radiative share 0.52',
    },
  },
  upholsteredChair: {
    sootYield: { value: 0.135, unit: 'g/g', source: 'CFAST input for NIST test SDC02 (fitted)', seen: 'read' },
    heatOfCombustion: { value: 16.1, unit: 'kJ/g', source: 'CFAST input for NIST test SDC02 (fitted)', seen: 'read' },
  },
  heptane: {
    sootYield: {
      value: 0.0149,
      spread: 0.0033,
      range: [0.0149, 0.037],
      unit: 'g/g',
      source: 'CFAST Validation Guide, NIST/NRC tests',
      seen: 'read',
      note: 'upper end of the range: handbook, from memory',
    },
    heatOfCombustion: {
      value: 44.6,
      range: [41.2, 44.6],
      unit: 'kJ/g',
      source: 'NUREG-1805, list of fuels',
      seen: 'read',
      note: 'lower end of the range: handbook, from memory',
    },
  },
  propylene: {
    sootYield: {
      value: 0.02,
      range: [0.02, 0.095],
      unit: 'g/g',
      source: 'CFAST input for the FM four-room tests',
      seen: 'read',
      note: 'upper end of the range: handbook, from memory',
    },
    heatOfCombustion: { value: 45.8, unit: 'kJ/g', source: 'CFAST input for the FM four-room tests', seen: 'read' },
  },
  propane: {
    sootYield: {
      value: 0.024,
      unit: 'g/g',
      source: 'SFPE Handbook, as quoted in an FDS input',
      clause: 'p. 3-111',
      edition: '3rd edition',
      seen: 'read',
    },
    heatOfCombustion: {
      value: 46.5,
      unit: 'kJ/g',
      source: 'SFPE Handbook, as quoted in an FDS input',
      clause: 'p. 3-111',
      edition: '3rd edition',
      seen: 'read',
    },
  },
  ethylene: {
    sootYield: { value: 0.043, unit: 'g/g', source: 'FDS Validation Guide, FM Burner, after Tewarson', seen: 'read' },
    heatOfCombustion: {
      value: 50.4,
      unit: 'kJ/g',
      source: 'FDS Validation Guide, FM Burner, after Tewarson',
      seen: 'read',
    },
  },
  acrylic: {
    sootYield: {
      value: 0.018,
      range: [0.018, 0.022],
      unit: 'g/g',
      source: 'MaCFP corner fires of PMMA',
      seen: 'read',
      note: 'upper end of the range: handbook, from memory',
    },
    heatOfCombustion: { value: 25, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  wood: {
    sootYield: {
      value: 0.015,
      unit: 'g/g',
      source: handbook,
      seen: 'from memory',
      note: 'red oak; the same value stands in open fire tools',
    },
    heatOfCombustion: { value: 12.4, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  polystyrene: {
    sootYield: { value: 0.164, unit: 'g/g', source: handbook, seen: 'from memory' },
    heatOfCombustion: { value: 27, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  polyethylene: {
    sootYield: { value: 0.06, unit: 'g/g', source: handbook, seen: 'from memory' },
    heatOfCombustion: { value: 38.4, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  polypropylene: {
    sootYield: { value: 0.059, unit: 'g/g', source: handbook, seen: 'from memory' },
    heatOfCombustion: { value: 38.6, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  nylon: {
    sootYield: { value: 0.075, unit: 'g/g', source: handbook, seen: 'from memory' },
    heatOfCombustion: { value: 27.1, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
  polyvinylChloride: {
    sootYield: { value: 0.172, unit: 'g/g', source: handbook, seen: 'from memory' },
    heatOfCombustion: { value: 5.7, unit: 'kJ/g', source: handbook, seen: 'from memory' },
  },
} satisfies Record<string, { sootYield: Sourced; heatOfCombustion: Sourced }>;
