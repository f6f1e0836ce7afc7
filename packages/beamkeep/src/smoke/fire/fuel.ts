import type { SmokeKind } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import {
  loneYieldFactor,
  fuels as published,
  radiativeShare,
  type Sourced,
  smoulderingHeat,
  smoulderingYield,
} from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessShare } from '../refuse.js';

/** A figure with what its sources span. */
export interface Spanned {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What burns. */
export interface Fuel {
  /** For people: "polyurethane foam". */
  readonly words: string;
  /** Flaming or smouldering: decides which extinction its smoke has. */
  readonly kind: SmokeKind;
  /** Smoke made of a gram of fuel [g/g]. */
  readonly sootYield: Spanned;
  /** [kJ/g] */
  readonly heatOfCombustion: Spanned;
  /** Share of the heat that leaves as radiation and lifts no plume. */
  readonly radiativeShare: number;
  /** Where the figures come from. */
  readonly source: string;
}

/** What sources span where they differ; the stated spread; else as far as `lone` says. */
function spanned({ value, range, spread }: Sourced, lone: number): Spanned {
  if (range !== undefined) return { value, low: range[0], high: range[1] };
  if (spread !== undefined) return { value, low: value - spread, high: value + spread };
  return { value, low: value / lone, high: value * lone };
}

const words = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** Names of the published fuels, for `fuelNamed`; `smouldering` is what smoulders: wood and soft foam. */
export const fuelNames: readonly string[] = [...Object.keys(published), 'smouldering'];

const smouldering: Fuel = {
  words: 'smouldering wood or foam',
  kind: 'smouldering',
  sootYield: spanned(smoulderingYield, 1),
  heatOfCombustion: spanned(smoulderingHeat, 1),
  radiativeShare: radiativeShare.value,
  source: `${smoulderingYield.source} (${smoulderingYield.seen}); heat: ${smoulderingHeat.source} (${smoulderingHeat.seen})`,
};

/**
 * A published fuel with what its sources span: the same fuel differs by a factor of 2.5 to 5 between them, so a result
 * is a band, not a number. Where there is one source, the least of these factors is assumed.
 *
 * @param name one of `fuelNames`
 * @throws UsageError for a name that is not among them
 * @example fuelNamed('polyurethaneFoam').sootYield // { value: 0.131, low: 0.083, high: 0.207 }
 */
export function fuelNamed(name: string): Fuel {
  if (name === 'smouldering') return smouldering;
  const found = Object.entries(published).find(([key]) => key === name)?.[1];
  if (found === undefined) throw new UsageError(`fuel "${name}" is not known: use ${fuelNames.join(', ')}`);
  const { sootYield, heatOfCombustion } = found;
  return {
    words: words(name),
    kind: 'flaming',
    sootYield: spanned(sootYield, loneYieldFactor.value),
    heatOfCombustion: spanned(heatOfCombustion, 1),
    radiativeShare: radiativeShare.value,
    source: `${sootYield.source} (${sootYield.seen})`,
  };
}

/** A fuel of the user's own; figures without a span count as sure. */
export interface OwnFuel {
  readonly words?: string;
  readonly kind?: SmokeKind;
  /** [g/g] */
  readonly sootYield: number | Spanned;
  /** [kJ/g] */
  readonly heatOfCombustion: number | Spanned;
  readonly radiativeShare?: number;
}

const sure = (figure: number | Spanned): Spanned =>
  typeof figure === 'number' ? { value: figure, low: figure, high: figure } : figure;

/**
 * A fuel by the user's own figures.
 *
 * @throws UsageError for a yield or a heat that is not more than 0, a span that does not hold its value, or a radiative
 *   share outside 0 to 1
 */
export function ownFuel({
  words: name = 'own fuel',
  kind = 'flaming',
  sootYield,
  heatOfCombustion,
  radiativeShare: share = radiativeShare.value,
}: OwnFuel): Fuel {
  const made = sure(sootYield);
  const heat = sure(heatOfCombustion);
  for (const [quantity, { value, low, high }, unit] of [
    ['soot yield', made, 'g/g'],
    ['heat of combustion', heat, 'kJ/g'],
  ] as const) {
    refuseUnlessAbove0(quantity, low, unit);
    refuseUnlessAbove0(quantity, high, unit);
    if (!(low <= value && value <= high)) {
      throw new UsageError(`${quantity} ${value} ${unit} must lie within its own span, ${low} to ${high}`);
    }
  }
  refuseUnlessShare('radiative share', share);
  return { words: name, kind, sootYield: made, heatOfCombustion: heat, radiativeShare: share, source: 'given' };
}
