// The entry `beamkeep/moments`: why at this time, and the room behind that question.
export {
  type BeamExplanationJson,
  type CauseThenJson,
  type CourseJson,
  type ExplainQuestion,
  type ExplanationJson,
  explain,
  explanationOf,
  type RecurrenceJson,
} from './explain.js';
export type { PanelList } from './log/index.js';
export * from './moments/index.js';
export { panelEntries } from './panelEntries.js';
export { secondCause } from './secondCause.js';
