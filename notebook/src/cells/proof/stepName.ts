import type { StepWord } from 'beamkeep/commissioning';

/** A step's word as people say it: "cover at once". */
export const stepName = (word: StepWord): string => word.replaceAll('-', ' ');
