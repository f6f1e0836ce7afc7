import type { Sourced } from './sourced.js';

/*
 * Factors of the plume and ceiling-jet laws, with Q and Qc (its convective share) in kW, heights and radii in m,
 * temperatures in K, mass flow in kg/s. Equation numbers are those of Enclosure Fire Dynamics.
 */

const book =
  'Karlsson and Quintiere, Enclosure Fire Dynamics, 2000, ch. 4, as quoted in an open collection of hand calculations';

/** Mean flame height: 0.235 Q^(2/5) - 1.02 D. */
export const flameHeight = {
  heat: { value: 0.235, unit: 'm/kW^(2/5)', source: book, clause: 'eq. 4.3', edition: '2000', seen: 'read' },
  diameter: { value: 1.02, unit: '1', source: book, clause: 'eq. 4.3', edition: '2000', seen: 'read' },
} satisfies Record<string, Sourced>;

/** Virtual origin: 0.083 Q^(2/5) - 1.02 D. */
export const virtualOrigin = {
  heat: {
    value: 0.083,
    unit: 'm/kW^(2/5)',
    source: book,
    clause: 'eq. 4.23',
    edition: '2000',
    seen: 'read',
    note: 'NUREG-1805, eq. 9-3, has the same',
  },
  diameter: { value: 1.02, unit: '1', source: book, clause: 'eq. 4.23', edition: '2000', seen: 'read' },
} satisfies Record<string, Sourced>;

/** Mass flow above the flame: 0.071 Qc^(1/3) (z - z0)^(5/3) + 0.00192 Qc. */
export const plumeFlow = {
  height: {
    value: 0.071,
    unit: 'kg/(s kW^(1/3) m^(5/3))',
    source: book,
    clause: 'eq. 4.27',
    edition: '2000',
    seen: 'read',
  },
  heat: { value: 0.00192, unit: 'kg/kJ', source: book, clause: 'eq. 4.27', edition: '2000', seen: 'read' },
} satisfies Record<string, Sourced>;

/** Mass flow within the flame: 0.0056 Qc z/L. */
export const flameFlow = {
  value: 0.0056,
  unit: 'kg/kJ',
  source: book,
  clause: 'eq. 4.27',
  edition: '2000',
  seen: 'read',
} satisfies Sourced;

/** Centreline temperature rise: 9.1 (T/(g cp^2 rho^2))^(1/3) Qc^(2/3) (z - z0)^(-5/3). */
export const plumeRise = {
  value: 9.1,
  unit: '1',
  source: book,
  clause: 'eq. 4.25',
  edition: '2000',
  seen: 'read',
  note: 'NUREG-1805, eq. 9-2, has the same; at most 900 K (CFAST)',
} satisfies Sourced;

/** Radius to half the temperature rise: 0.12 (T0/T)^(1/2) (z - z0). */
export const plumeRadius = {
  value: 0.12,
  unit: '1',
  source: book,
  clause: 'eq. 4.24',
  edition: '2000',
  seen: 'read',
} satisfies Sourced;

/** Radius at which the temperature rise is 1/e: 0.14 (T0/T)^(1/2) (z - z0). */
export const plumeWidth = {
  value: 0.14,
  unit: '1',
  source: 'CFAST Technical Reference Guide, Plume Temperature and Velocity',
  seen: 'read',
} satisfies Sourced;

/** Width of the visible plume over height, for placing beams. */
export const visiblePlumeWidth = {
  value: 0.25,
  range: [0.24, 0.3],
  unit: '1',
  source: 'NFPA 92, plume width for detection by beams',
  seen: 'from memory',
  note: 'range: twice the radius of eq. 4.24; 0.5 for touching walls (from memory)',
} satisfies Sourced;

const jet = 'SFPE Handbook, ch. 14 (Alpert), as coded in an open fire library';

/** Temperature rise of the ceiling jet: 16.9 Q^(2/3)/H^(5/3) near the axis, 5.38 (Q/r)^(2/3)/H beyond r/H = 0.18. */
export const ceilingJetRise = {
  near: {
    value: 16.9,
    unit: 'K m^(5/3)/kW^(2/3)',
    source: jet,
    seen: 'read',
    note: 'data from ceilings of 4.6 to 15.5 m, from memory',
  },
  far: {
    value: 5.38,
    unit: 'K m^(5/3)/kW^(2/3)',
    source: jet,
    seen: 'read',
    note: 'data from ceilings of 4.6 to 15.5 m, from memory',
  },
  turn: { value: 0.18, unit: '1', source: jet, seen: 'read', note: 'data from ceilings of 4.6 to 15.5 m, from memory' },
} satisfies Record<string, Sourced>;

const jetSpeed = 'SFPE Handbook, ch. 14 (Alpert)';

/** Speed of the ceiling jet: 0.96 (Q/H)^(1/3) near the axis, 0.195 Q^(1/3) H^(1/2) / r^(5/6) beyond r/H = 0.15. */
export const ceilingJetSpeed = {
  near: {
    value: 0.96,
    unit: 'm^(4/3)/(s kW^(1/3))',
    source: jetSpeed,
    seen: 'from memory',
    note: 'reproduces a worked result of NUREG-1805, ch. 11, that was read',
  },
  far: {
    value: 0.195,
    unit: 'm^(4/3)/(s kW^(1/3))',
    source: jetSpeed,
    seen: 'from memory',
    note: 'reproduces a worked result of NUREG-1805, ch. 11, that was read',
  },
  turn: {
    value: 0.15,
    unit: '1',
    source: jetSpeed,
    seen: 'from memory',
    note: 'reproduces a worked result of NUREG-1805, ch. 11, that was read',
  },
} satisfies Record<string, Sourced>;

/** Depth of the ceiling jet: 0.112 H (1 - exp(-2.24 r/H)). */
export const ceilingJetDepth = {
  share: {
    value: 0.112,
    unit: 'H',
    source: 'CFAST Technical Reference Guide, Ceiling Jet',
    seen: 'read',
    note: 'r/H from 0.26 to 2',
  },
  rate: { value: 2.24, unit: '1', source: 'CFAST Technical Reference Guide, Ceiling Jet', seen: 'read' },
  from: {
    value: 0.26,
    unit: 'H',
    source: 'CFAST Technical Reference Guide, Ceiling Jet',
    seen: 'read',
    note: 'least radius with data; nearer the plume is still turning',
  },
} satisfies Record<string, Sourced>;

const lag = 'Mowrer, Fire Technology, August 1990, as in the NUREG-1805 spreadsheet';

/** Transport lag of a steady fire: 0.67 H^(4/3)/Q^(1/3) + r^(11/6)/(1.2 Q^(1/3) H^(1/2)). */
export const transportLag = {
  plume: { value: 0.67, unit: 's kW^(1/3)/m^(4/3)', source: lag, clause: 'ch. 11', seen: 'read' },
  ceiling: { value: 1.2, unit: 'm^(4/3)/(s kW^(1/3))', source: lag, clause: 'ch. 11', seen: 'read' },
} satisfies Record<string, Sourced>;

/** Smoke reaches the roof while dT < 96.2 Qc^(2/3) H^(-5/3). */
export const stratification = {
  value: 96.2,
  unit: 'K m^(5/3)/kW^(2/3)',
  source: 'NFPA 92B, 2000, A.3.4: 1300 in degF, Btu/s and ft (read in the NUREG-1805 spreadsheet), turned to SI',
  seen: 'derived',
} satisfies Sourced;

/** Greatest rise in a linear gradient: 5.54 Qc^(1/4) (dT/dz)^(-3/8). */
export const gradientRise = {
  value: 5.54,
  unit: 'm K^(3/8)/(kW^(1/4) m^(3/8))',
  source: 'NFPA 92, stratification in a temperature gradient',
  seen: 'from memory',
  note: 'agrees with the 96.2 of the hot layer within 0.2 %',
} satisfies Sourced;

const guide = 'CFAST Technical Reference Guide, Plume Entrainment';
const guideSpeed = 'CFAST Technical Reference Guide, Plume Temperature and Velocity';
const guideJet = 'CFAST Technical Reference Guide, Ceiling Jet';

/** The factors of `plumeFlow` for any air: 0.196 (g rho^2/(cp T))^(1/3), and 2.9/(sqrt(g) cp rho T)^(2/3) times it. */
export const plumeFlowOfAir = {
  height: { value: 0.196, unit: '1', source: guide, seen: 'read' },
  heat: { value: 2.9, unit: '1', source: guide, seen: 'read' },
} satisfies Record<string, Sourced>;

/** Greatest temperature rise on the axis of a plume. */
export const greatestRise = { value: 900, unit: 'K', source: guideSpeed, seen: 'read' } satisfies Sourced;

/** Speed on the axis: 3.4 (g/(cp rho T))^(1/3) Qc^(1/3) (z - z0)^(-1/3). */
export const plumeSpeed = { value: 3.4, unit: '1', source: guideSpeed, seen: 'read' } satisfies Sourced;

/** Greatest speed on the axis: about 2 Qc^(1/5). */
export const greatestSpeed = {
  value: 2,
  unit: 'm/(s kW^(1/5))',
  source: guideSpeed,
  seen: 'read',
} satisfies Sourced;

/** A fire at a wall or in a corner is half or a quarter of a free one with its mirror images. */
export const mirrorImages = {
  wall: { value: 2, unit: 'fires', source: guide, seen: 'read' },
  corner: { value: 4, unit: 'fires', source: guide, seen: 'read' },
} satisfies Record<string, Sourced>;

/** Flame height of a small source: 0.2 Q^(2/5). */
export const smallFlame = {
  value: 0.2,
  unit: 'm/kW^(2/5)',
  source: 'CIBSE Guide E, eq. 6.55, with its test value in an open fire library',
  clause: 'eq. 6.55',
  seen: 'read',
} satisfies Sourced;

/** Flame height at a wall: 0.034 (kW a metre of wall)^(2/3). */
export const wallFlame = {
  value: 0.034,
  unit: 'm (m/kW)^(2/3)',
  source: 'NUREG-1805, eq. 4-1, with its test value in an open fire library',
  clause: 'eq. 4-1',
  seen: 'read',
} satisfies Sourced;

/** Flame height in a corner: 0.075 Q^(3/5). */
export const cornerFlame = {
  value: 0.075,
  unit: 'm/kW^(3/5)',
  source: 'NUREG-1805, eq. 4-3, with its test value in an open fire library',
  clause: 'eq. 4-3',
  seen: 'read',
} satisfies Sourced;

/** McCaffrey's three regions by z/Q^(2/5), Q the total heat: speed k (z/Q^(2/5))^n Q^(1/5). */
export const mccaffrey = {
  flame: {
    factor: { value: 6.8, unit: 'm^(1/2)/s', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
    power: { value: 0.5, unit: '1', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
    until: { value: 0.08, unit: 'm/kW^(2/5)', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
  },
  intermittent: {
    factor: { value: 1.9, unit: 'm/(kW^(1/5) s)', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
    power: { value: 0, unit: '1', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
    until: { value: 0.2, unit: 'm/kW^(2/5)', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
  },
  plume: {
    factor: {
      value: 1.1,
      unit: 'm^(4/3)/(kW^(1/3) s)',
      source: book,
      clause: 'eq. 4.30',
      edition: '2000',
      seen: 'read',
    },
    power: { value: -0.3333333333333333, unit: '1', source: book, clause: 'eq. 4.30', edition: '2000', seen: 'read' },
  },
  rise: { value: 0.9, unit: '1', source: book, clause: 'eq. 4.29', edition: '2000', seen: 'read' },
} satisfies Record<string, Sourced | Record<string, Sourced>>;

/** Plume of an ideal point source: mass flow 0.20 (g rho^2/(cp T))^(1/3) Q^(1/3) z^(5/3). */
export const pointPlumeFlow = {
  value: 0.2,
  unit: '1',
  source: book,
  clause: 'eq. 4.19',
  edition: '2000',
  seen: 'read',
} satisfies Sourced;

/** Temperature rise of it: 5.0 (T/(g cp^2 rho^2))^(1/3) Q^(2/3) z^(-5/3). */
export const pointPlumeRise = {
  value: 5,
  unit: '1',
  source: book,
  clause: 'eq. 4.20',
  edition: '2000',
  seen: 'read',
} satisfies Sourced;

/** Heights of the ceilings from which the laws of the ceiling jet were drawn, and how far from the axis they hold. */
export const ceilingJetReach = {
  lowest: { value: 4.6, unit: 'm', source: jetSpeed, seen: 'from memory' },
  highest: { value: 15.5, unit: 'm', source: jetSpeed, seen: 'from memory', note: 'an open fire library says 18 m' },
  radius: { value: 2, unit: 'H', source: jetSpeed, seen: 'from memory' },
} satisfies Record<string, Sourced>;

/** The zone model's ceiling jet: rise T Q*^(2/3) 6.3, or times (0.225 + 0.27 r/H)^(-4/3); speed likewise. */
export const zoneModelJet = {
  riseNear: { value: 6.3, unit: '1', source: guideJet, seen: 'read' },
  riseConstant: { value: 0.225, unit: '1', source: guideJet, seen: 'read' },
  riseRadius: { value: 0.27, unit: '1', source: guideJet, seen: 'read' },
  riseTurn: { value: 0.2, unit: 'H', source: guideJet, seen: 'read' },
  speedNear: { value: 3.61, unit: '1', source: guideJet, seen: 'read' },
  speedFar: { value: 1.06, unit: '1', source: guideJet, seen: 'read' },
  speedPower: { value: -0.69, unit: '1', source: guideJet, seen: 'read' },
  speedTurn: { value: 0.17, unit: 'H', source: guideJet, seen: 'read' },
} satisfies Record<string, Sourced>;

/** Time to a temperature rise at the ceiling, in feet, Btu/s and degF: X = a Y + b Y^c. */
export const riseTime = {
  square: {
    value: 4.6e-4,
    unit: 'customary units',
    source: 'Milke, as in the NUREG-1805 spreadsheet',
    clause: 'ch. 11',
    seen: 'read',
  },
  sixth: {
    value: 2.7e-15,
    unit: 'customary units',
    source: 'Milke, as in the NUREG-1805 spreadsheet',
    clause: 'ch. 11',
    seen: 'read',
  },
} satisfies Record<string, Sourced>;

/** Depth of the warm air under a sunlit roof that a plume has to enter. */
export const warmRoofDepth = {
  value: 0.05,
  unit: 'H',
  source: 'half of what a ceiling jet is deep (0.112 H): the correlation itself names none',
  seen: 'own choice',
} satisfies Sourced;

/** Floor area over height squared within which a smoke layer fills a hall evenly. */
export const layerShape = {
  least: { value: 0.9, unit: '1', source: 'NFPA 92, smoke layer interface', seen: 'from memory' },
  most: { value: 14, unit: '1', source: 'NFPA 92, smoke layer interface', seen: 'from memory' },
} satisfies Record<string, Sourced>;

/** Height at which smoke is first seen while it fills a hall, from tests: of a steady fire z/H = a - b ln(tau), of a growing one z/H = c tau^d. */
export const firstSmoke = {
  steady: {
    value: 1.11,
    unit: '1',
    source: 'NFPA 92, first indication of smoke, steady fire, as quoted after Klote and Milke',
    seen: 'read',
    note: 'tau = t Q^(1/3) H^(-4/3) (A/H^2)^(-1), all of Q',
  },
  perLog: {
    value: 0.28,
    unit: '1',
    source: 'NFPA 92, first indication of smoke, steady fire, as quoted after Klote and Milke',
    seen: 'read',
  },
  growing: {
    value: 0.91,
    unit: '1',
    source: 'NFPA 92, first indication of smoke, t-squared fire, as quoted after Klote and Milke',
    seen: 'read',
    note: 'tau = t tg^(-2/5) H^(-4/5) (A/H^2)^(-3/5)',
  },
  power: {
    value: -1.45,
    unit: '1',
    source: 'NFPA 92, first indication of smoke, t-squared fire, as quoted after Klote and Milke',
    seen: 'read',
  },
  lowest: {
    value: 0.2,
    unit: 'H',
    source: 'NFPA 92, first indication of smoke: lowest height of the tests, as quoted after Klote and Milke',
    seen: 'read',
  },
} satisfies Record<string, Sourced>;

/** Warmth on its axis below which a plume counts as carried off by draughts. */
export const leastWarmth = {
  value: 1,
  unit: 'K',
  source: 'air of a hall differs by that much from place to place',
  seen: 'own choice',
  note: 'its smoke then counts as mixed through the whole hall, which is the careful choice',
} satisfies Sourced;
