/** The words for a cause in a truth file: those of the diagnosis. */
export type CauseWord =
  | 'contamination'
  | 'misalignment-step'
  | 'misalignment-drift'
  | 'building-movement'
  | 'obstruction'
  | 'condensation'
  | 'process-aerosol'
  | 'ambient-light'
  | 'vibration'
  | 'electrical-noise'
  | 'data-gap'
  | 'smoke-like'
  | 'cleaned';
