export type { InputNote, InputReport } from './inputNotes.js';
export {
  type Gunzip,
  type LogSource,
  type LogSources,
  logOfText,
  type ReadOptions,
  type RowReader,
} from './logSource.js';
export { type PanelList, parsePanelList } from './parsePanelList.js';
export { smallestStep } from './quantum.js';
export { type BeamFacts, type BeamTap, readBeams } from './readBeams.js';
export { type BeamReadings, beamNamed, type ReadingsQuestion, readReadings } from './readReadings.js';
export { readRows } from './readRows.js';
export { type BeamSamples, readSamples } from './readSamples.js';
export { readTraces } from './readTraces.js';
export type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
export { toLevel } from './scale.js';
export { shownName } from './shownName.js';
export { type TextTable, textTable } from './textTable.js';
export { damagedGzip } from './unzipped.js';
