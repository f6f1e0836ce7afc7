// Every entry of the built library but that for files: what `npm run size` measures as everything. A test holds this
// list to the manifest.

export * as attenuation from '../../packages/beamkeep/dist/attenuation/index.js';
export * as clocks from '../../packages/beamkeep/dist/clocks/index.js';
export * as columns from '../../packages/beamkeep/dist/columns/index.js';
export * as commissioning from '../../packages/beamkeep/dist/commissioningEntry.js';
export * as diagnosis from '../../packages/beamkeep/dist/diagnosis/index.js';
export * as forecast from '../../packages/beamkeep/dist/forecast/index.js';
export * as root from '../../packages/beamkeep/dist/index.js';
export * as log from '../../packages/beamkeep/dist/log/index.js';
export * as moments from '../../packages/beamkeep/dist/momentsEntry.js';
export * as numbers from '../../packages/beamkeep/dist/numbers/index.js';
export * as optics from '../../packages/beamkeep/dist/optics/index.js';
export * as planning from '../../packages/beamkeep/dist/planningEntry.js';
export * as response from '../../packages/beamkeep/dist/response/index.js';
export * as simulation from '../../packages/beamkeep/dist/simulation/index.js';
export * as site from '../../packages/beamkeep/dist/site/index.js';
export * as smoke from '../../packages/beamkeep/dist/smoke/index.js';
export * as statistics from '../../packages/beamkeep/dist/statistics/index.js';
