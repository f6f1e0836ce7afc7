/*
 * What must be minded on the commissioning day, where it is needed: beamkeep explains and computes, people decide and
 * people fall from lifts. Most of it is practice of the trade without a source; what a standard says names it.
 */

/** A part of the commissioning day. */
export const stages = ['before', 'aim', 'covered', 'thresholds', 'prove', 'after'] as const;
/** One of `stages`. */
export type Stage = (typeof stages)[number];

/** One caution. */
export interface Caution {
  readonly stage: Stage;
  readonly words: string;
  readonly source: string;
}

const practice = 'common practice, no source';

const all: readonly Caution[] = [
  {
    stage: 'before',
    words:
      'A system under test is out of service. Before the first test tell those who monitor it and those who are in the ' +
      'building, write down whom and when, and keep a fire watch where the authority asks for one.',
    source: practice,
  },
  {
    stage: 'before',
    words:
      'Heads and reflectors hang high. Work at height only with a checked lift, trained people and a plan to get somebody ' +
      'down; nobody leans out to reach a reflector.',
    source: practice,
  },
  {
    stage: 'aim',
    words:
      'Light for aiming may be a laser: read its class label (IEC 60825-1) before it is switched on, never look into it or ' +
      'its reflection, and do not aim it at people.',
    source: 'class label of the product; IEC 60825-1 (title only)',
  },
  {
    stage: 'aim',
    words: 'The highest reading need not be the reflector: only a covered test shows that the light comes from there.',
    source: practice,
  },
  {
    stage: 'covered',
    words:
      'Cover the whole reflector, with something opaque and dull: foil and white card throw light back themselves.',
    source: practice,
  },
  {
    stage: 'thresholds',
    words:
      "Who may change a threshold is a matter of licence: the maker's limits and the authority's come before every figure " +
      'here. Write down what was changed, by whom, and prove the beam again.',
    source: practice,
  },
  {
    stage: 'prove',
    words:
      'A filter is worth its single-pass value at the wavelength of the beam: many gels for visible light pass near ' +
      'infrared. Before a reflective head it is met twice, a cover on the reflector once.',
    source: practice,
  },
  {
    stage: 'prove',
    words: 'Covers and filters prove optics and delays. That smoke reaches the beam they do not prove.',
    source: practice,
  },
  {
    stage: 'after',
    words:
      'At the end: covers and filters counted and taken down, every beam normal and reset, every isolation lifted, the ' +
      'panel clear, and those who monitor told that the system is back, with the time.',
    source: practice,
  },
  {
    stage: 'after',
    words:
      'Names in a record are personal data: keep it where it belongs, for as long as the rules ask, and no longer.',
    source: 'law of data protection, by place',
  },
];

/** Stages in which something is tested, so that what stands before and after every test goes with them. */
const tests: readonly Stage[] = ['aim', 'covered', 'prove'];

/**
 * What to mind at a stage; before and after every test included.
 *
 * @example stageCautions('prove').map(({ words }) => words)
 */
export const stageCautions = (stage: Stage): Caution[] =>
  all.filter(
    (caution) =>
      caution.stage === stage ||
      (tests.includes(stage) && (caution.stage === 'before' || (caution.stage === 'after' && stage === 'prove'))),
  );

/** Every caution, in the order of the day. */
export const everyCaution: readonly Caution[] = all;
