export type { InputNote, InputReport } from './inputNotes.js';
export { type Gunzip, type LogSource, type LogSources, logOfText, type ReadOptions } from './logSource.js';
export { type BeamFacts, type BeamTap, readBeams } from './readBeams.js';
export { readRows } from './readRows.js';
export { readTraces } from './readTraces.js';
export type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
export { damagedGzip } from './unzipped.js';
