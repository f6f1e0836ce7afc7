import type { Sourced } from './sourced.js';

const annexC = 'EN 1991-1-5, linear expansion';

/** Share of its length by which a material grows for a kelvin. */
export const thermalExpansion = {
  steel: {
    value: 12e-6,
    range: [11e-6, 13e-6],
    unit: '1/K',
    source: 'structural text on expansion of steel',
    seen: 'read',
    note: 'EN 1991-1-5, annex C, gives 12e-6 (from memory)',
  },
  concrete: {
    value: 10e-6,
    range: [10e-6, 12e-6],
    unit: '1/K',
    source: 'Vietnamese concrete table (10e-6) and post-frame magazine (12e-6)',
    seen: 'read',
  },
  aluminium: { value: 24e-6, unit: '1/K', source: annexC, clause: 'Table C.1', seen: 'from memory' },
  stainlessSteel: { value: 16e-6, unit: '1/K', source: annexC, clause: 'Table C.1', seen: 'from memory' },
  timberAlongGrain: {
    value: 3.8e-6,
    range: [3.1e-6, 4.5e-6],
    unit: '1/K',
    source: 'Wood Handbook, along the grain, as quoted',
    seen: 'read',
    note: 'value: middle of the range',
  },
  timberAcrossGrain: {
    value: 50e-6,
    range: [30e-6, 70e-6],
    unit: '1/K',
    source: 'EN 1991-1-5, across the grain, as quoted',
    seen: 'read',
    note: 'value: middle of the range',
  },
} satisfies Record<string, Sourced>;

const roofMembers = 'International Building Code, deflection limits';

/** Span over the deflection that a member may show under live, snow or wind load. */
export const deflectionLimits = {
  roofPlasterCeiling: {
    value: 360,
    unit: 'span/deflection',
    source: roofMembers,
    clause: 'Table 1604.3',
    seen: 'read',
  },
  roofOtherCeiling: { value: 240, unit: 'span/deflection', source: roofMembers, clause: 'Table 1604.3', seen: 'read' },
  roofNoCeiling: { value: 180, unit: 'span/deflection', source: roofMembers, clause: 'Table 1604.3', seen: 'read' },
  metalSecondary: {
    value: 150,
    unit: 'span/deflection',
    source: roofMembers,
    clause: 'Table 1604.3',
    seen: 'read',
    note: 'formed metal roofing',
  },
  floor: { value: 360, unit: 'span/deflection', source: roofMembers, clause: 'Table 1604.3', seen: 'read' },
} satisfies Record<string, Sourced>;

/** Height over the sway that a frame with metal panels may show in the wind of ten years. */
export const frameDrift = {
  value: 60,
  range: [60, 100],
  unit: 'height/drift',
  source: 'AISC Design Guide 3, serviceability limits',
  edition: '2nd edition',
  seen: 'read',
} satisfies Sourced;

/** Slope at the end of a simple beam, over deflection/span under uniform load. */
export const endSlope = {
  value: 3.2,
  unit: '1',
  source: 'simple beam under uniform load, 16/5 of deflection/span',
  seen: 'derived',
} satisfies Sourced;

const insulatedRoof = 'NBS Technical Note 231, 1963, abstract';

/** Temperature of a roof over insulation against the air. */
export const roofTemperature = {
  aboveByDay: { value: 44.44444444444444, unit: 'K', source: insulatedRoof, seen: 'read', note: '80 degF, in sun' },
  belowByNight: { value: 11.11111111111111, unit: 'K', source: insulatedRoof, seen: 'read', note: '20 degF' },
  blackAboveByDay: {
    value: 50,
    spread: 15,
    unit: 'K',
    source: 'estimate of solar roofs in light wind, open text',
    seen: 'read',
  },
} satisfies Record<string, Sourced>;
