import { UsageError } from '../../columns/index.js';
import { bs5839, gb50116, nfpa72, sp484, tariffAdvisory } from '../../numbers/index.js';
import type { RuleSet } from './ruleSet.js';

/** The rule sets that are known, each as far as its figures were seen or are remembered. */
export const ruleSets: readonly RuleSet[] = [
  {
    id: 'bs5839-1',
    title: 'BS 5839-1, fire detection and fire alarm systems for buildings',
    country: 'United Kingdom',
    edition: '2017',
    superseded:
      'BS 5839-1:2025, published 30 April 2025, has replaced this edition, with new clause numbers; its figures were not seen',
    figures: {
      betweenBeams: bs5839.betweenBeams,
      toSide: bs5839.toSide,
      separation: bs5839.separation,
      belowCeilingLeast: bs5839.belowCeilingLeast,
      belowCeilingMost: bs5839.belowCeilingMost,
      ceilingMost: bs5839.ceiling,
      ceilingMostSensitive: bs5839.ceilingAtMost,
      clearRadius: bs5839.fromWall,
      aboveWalkway: bs5839.aboveWalkway,
      apexWidening: bs5839.apexWidening,
      apexWideningMost: bs5839.apexWideningMost,
      lowerRowReach: bs5839.lowerRowReach,
    },
  },
  {
    id: 'nfpa72',
    title: 'NFPA 72, National Fire Alarm and Signaling Code: a guide; the rule is the maker’s instructions',
    country: 'United States',
    edition: '2010 to 2019',
    superseded: 'newer editions (2022, 2025) are out (from memory); their figures were not seen',
    figures: { betweenBeams: nfpa72.betweenBeams, toSide: nfpa72.toSide },
  },
  {
    id: 'gb50116',
    title: 'GB 50116, code for design of automatic fire alarm systems',
    country: 'China',
    edition: '2013',
    figures: {
      betweenBeams: gb50116.betweenBeams,
      toSide: gb50116.toSideMost,
      toSideLeast: gb50116.toSideLeast,
      separation: gb50116.separation,
      belowCeilingLeast: gb50116.belowCeilingLeast,
      belowCeilingMost: gb50116.belowCeilingMost,
      beamHeightMost: gb50116.aboveFloor,
      lowerRowsAbove: gb50116.lowerRowsAbove,
      lowerRow: gb50116.lowerRow,
      secondLowerRowAbove: gb50116.secondLowerRowAbove,
      secondLowerRow: gb50116.secondLowerRow,
    },
  },
  {
    id: 'tariff-advisory',
    title: 'Tariff Advisory Committee, rules for automatic fire alarm systems',
    country: 'India',
    edition: 'not named in the text seen',
    superseded: 'the committee’s tariffs have ended; the national code and IS 2189 decide (from memory)',
    figures: {
      betweenBeams: tariffAdvisory.betweenBeams,
      toSide: tariffAdvisory.toSide,
      hallHeightLeast: tariffAdvisory.leastHeight,
      ceilingMost: tariffAdvisory.greatestHeight,
    },
  },
  {
    id: 'sp484',
    title: 'SP 5.13130 and SP 484.1311500, fire alarm systems',
    country: 'Russia',
    edition: '2009 and 2020',
    superseded:
      'SP 484.1311500.2020 stands since 1 March 2021, with an amendment since 1 September 2025; its figures were not seen',
    figures: { betweenBeams: sp484.betweenBeams, toSide: sp484.toSide },
  },
  { id: 'own', title: 'the user’s own figures', country: 'any', edition: 'given', figures: {} },
];

/**
 * The rule set of this word.
 *
 * @throws UsageError for a word that is not among them
 */
export function ruleSetNamed(id: string): RuleSet {
  const found = ruleSets.find((each) => each.id === id);
  if (found === undefined) {
    throw new UsageError(`rule set "${id}" is not known: use ${ruleSets.map((each) => each.id).join(', ')}`);
  }
  return found;
}
