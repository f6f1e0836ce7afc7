import { ruleSets } from 'beamkeep/planning';

/** A rule set as it is offered. */
export interface RuleSetTold {
  readonly id: string;
  readonly title: string;
  readonly country: string;
  readonly edition: string;
}

/** The rule sets that are known. */
export const ruleSetsTold = (): RuleSetTold[] =>
  ruleSets.map(({ id, title, country, edition }) => ({ id, title, country, edition }));
