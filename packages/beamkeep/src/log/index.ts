export type { InputNote, InputReport } from './inputNotes.js';
export { type Gunzip, type LogSource, type LogSources, logOfText, type ReadOptions } from './logSource.js';
export { readRows } from './readRows.js';
export { readTraces } from './readTraces.js';
export type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
export { damagedGzip } from './unzipped.js';
