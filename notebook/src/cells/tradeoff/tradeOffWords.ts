import type { FireCost, NuisanceCell, Setting, ToldBand, TradeOff } from 'beamkeep/planning';
import { limitsBroken, settingsOf } from 'beamkeep/planning';
import type { Pair } from '../../plots/tradeOffFigure.js';
import { counted, figure } from '../../words/numbers.js';

/*
 * What a trade-off says, in sentences. Nowhere is a setting recommended: both costs stand side by side.
 */

/** A figure with its band: "59 s (48 to 79 s)". */
export function bandInWords({ value, early, late }: ToldBand, unit: string): string {
  if (value === null)
    return early === null ? 'not found while watched' : `not found for sure (${figure(early)} ${unit} at best)`;
  const ends =
    late === null
      ? `${figure(early ?? value, 2)} ${unit} to not at all`
      : `${figure(early ?? value, 2)} to ${figure(late, 2)} ${unit}`;
  return `${figure(value, 2)} ${unit} (${ends})`;
}

/** How often the log alarmed at a setting, and the limits that the count leaves. */
export const nuisanceInWords = ({ count, perYear, low, high }: NuisanceCell): string =>
  `${counted(count)} ${count === 1 ? 'alarm' : 'alarms'} in the log, ${figure(perYear, 2)} a year (${figure(low, 2)} to ${figure(high, 2)})`;

/** A fire in short: "t-squared, fast". */
export const fireInShort = ({ fire }: FireCost): string => fire.replace(/:.*(, [^,]+)$/, '$1');

/** What a setting costs, as the grid has it. */
export function costsAt(
  { thresholds, delays, fires, nuisance }: TradeOff,
  { threshold, delay }: Pair,
): { readonly fires: readonly (FireCost['current'] | undefined)[]; readonly nuisance: NuisanceCell | undefined } {
  const [row, column] = [thresholds.indexOf(threshold), delays.indexOf(delay)];
  return {
    fires: fires.map(({ cells }) => cells[row]?.[column]),
    nuisance: nuisance?.cells[row]?.[column],
  };
}

/** A setting of the frontier that is sooner than another without more nuisance, or as soon with less; none: undefined. */
export function betterThan(tradeOff: TradeOff, { threshold, delay }: Pair): Setting | undefined {
  const own = settingsOf(tradeOff).find((each) => each.threshold === threshold && each.delay === delay);
  if (own === undefined) return undefined;
  return tradeOff.frontier
    .filter(
      ({ seconds, perYear }) =>
        seconds <= own.seconds && perYear <= own.perYear && (seconds < own.seconds || perYear < own.perYear),
    )
    .at(-1);
}

/**
 * What the trade-off says of the setting of the site and of the one that is tried.
 *
 * @param smokeLike stretches of the beam in the log that cannot be told from smoke: where there are some, fewer alarms
 * are no gain, and no setting is said to be better
 */
export function tradeOffSentences(tradeOff: TradeOff, tried: Pair, smokeLike: number): string[] {
  const { current, fires, nuisance } = tradeOff;
  const of = (pair: Pair): string => {
    const costs = costsAt(tradeOff, pair);
    const found = fires.map((fire, i) => {
      const cost = costs.fires[i];
      return cost
        ? `${fireInShort(fire)}: alarm after ${bandInWords(cost.seconds, 's')}, at ${bandInWords(cost.heat, 'kW')}`
        : '';
    });
    return `${found.join('; ')}.${costs.nuisance ? ` ${nuisanceInWords(costs.nuisance)}.` : ''}`;
  };
  const words = [`As it is set, ${figure(current.threshold)} % held for ${figure(current.delay)} s: ${of(current)}`];
  if (tried.threshold !== current.threshold || tried.delay !== current.delay)
    words.push(`Tried, ${figure(tried.threshold)} % held for ${figure(tried.delay)} s: ${of(tried)}`);
  const broken = limitsBroken(tried, tradeOff.limits);
  if (broken.length > 0)
    words.push(
      `${figure(tried.threshold)} % and ${figure(tried.delay)} s lie outside: ${broken.map(({ words: asks, clause }) => `${asks} (${clause})`).join('; ')}.`,
    );
  const better = smokeLike > 0 ? undefined : betterThan(tradeOff, tried);
  if (better)
    words.push(
      `In this log ${figure(better.threshold)} % held for ${figure(better.delay)} s is no worse in either cost and better in one: ${figure(better.seconds, 2)} s, ${figure(better.perYear, 2)} a year.`,
    );
  if (smokeLike > 0)
    words.push(
      `${smokeLike === 1 ? 'One stretch' : `${counted(smokeLike)} stretches`} of this beam cannot be told from smoke. Their alarms are counted here as nuisance, yet a setting that stays silent then may have missed a fire: settle first what they were.`,
    );
  if (nuisance)
    words.push(
      `The log holds ${figure(nuisance.years, 2)} years; what it never saw it can't count, so the upper limit of the yearly figure is the one to plan with.`,
    );
  return words;
}
