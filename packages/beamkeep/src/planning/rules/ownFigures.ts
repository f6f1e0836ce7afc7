import { UsageError } from '../../columns/index.js';
import { type FigureName, figureMeanings, figureNames, type RuleFigure, type RuleSet } from './ruleSet.js';

/** Figures that the user puts in place of a rule set's, or beside them. */
export type OwnFigures = Partial<Readonly<Record<FigureName, number>>>;

/** The figure of this name. */
export function figureNamed(name: string): FigureName {
  const found = figureNames.find((each) => each === name);
  if (found === undefined) throw new UsageError(`figure "${name}" is not known: use ${figureNames.join(', ')}`);
  return found;
}

/**
 * A rule set with the user's own figures in it; each says that it was given, and what it replaced.
 *
 * @throws UsageError for a figure below 0, endless or missing
 */
export function withOwnFigures(rules: RuleSet, own: OwnFigures): RuleSet {
  const figures: Partial<Record<FigureName, RuleFigure>> = { ...rules.figures };
  for (const name of figureNames) {
    const value = own[name];
    if (value === undefined) continue;
    if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
      throw new UsageError(`figure ${name} is ${value}: it must be a number of 0 or more (${figureMeanings[name]})`);
    }
    const replaced = rules.figures[name];
    figures[name] = {
      value,
      unit: replaced?.unit ?? unitOf(name),
      source: 'given by the user',
      seen: 'given',
      ...(replaced && { note: `in place of ${replaced.value} ${replaced.unit}, ${replaced.source}` }),
    };
  }
  return { ...rules, figures };
}

function unitOf(name: FigureName): string {
  if (name === 'apexWidening') return '%/degree';
  return name === 'apexWideningMost' || name === 'lowerRowReach' ? '%' : 'm';
}
