export { day, hour, minute, second } from './instants.js';
export type { PanelEntry } from './panelEntry.js';
export { type Channel, rows, type Samples } from './samples.js';
export { rowAt, type Span, type Stretch } from './span.js';
export type { BeamRecord, Trace } from './trace.js';
export { UsageError } from './usageError.js';
