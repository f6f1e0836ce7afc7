import type { CouldBeSmoke, LabelledCause, TraceOfCause } from './truthFile.js';

/** What one labelling says. */
export interface Labels {
  readonly causes: LabelledCause[];
  readonly traces: TraceOfCause[];
  readonly couldBeSmoke: CouldBeSmoke[];
}

/** Nothing yet. */
export const noLabels = (): Labels => ({ causes: [], traces: [], couldBeSmoke: [] });
