import type { Setting, TradeOff } from './tradeOff.js';

/**
 * Settings that no other one beats in both costs at once: every other setting is later, or a greater nuisance, or both.
 *
 * @param settings any number
 * @returns by time to alarm, quickest first
 */
export function frontier(settings: readonly Setting[]): Setting[] {
  const ordered = [...settings].sort(
    (a, b) => a.seconds - b.seconds || a.perYear - b.perYear || a.threshold - b.threshold || a.delay - b.delay,
  );
  let least = Number.POSITIVE_INFINITY;
  return ordered.filter(({ perYear }) => {
    if (perYear >= least) return false;
    least = perYear;
    return true;
  });
}

/** Every setting of a trade-off that has both costs: fires that it finds, and a nuisance. */
export function settingsOf({
  thresholds,
  delays,
  fires,
  nuisance,
}: Pick<TradeOff, 'thresholds' | 'delays' | 'fires' | 'nuisance'>): Setting[] {
  if (fires.length === 0) return [];
  const worst = (row: number, column: number, which: 'value' | 'early' | 'late'): number =>
    Math.max(...fires.map(({ cells }) => cells[row]?.[column]?.seconds[which] ?? Number.POSITIVE_INFINITY));
  return thresholds
    .flatMap((threshold, row) =>
      delays.map((delay, column) => ({
        threshold,
        delay,
        seconds: worst(row, column, 'value'),
        early: worst(row, column, 'early'),
        late: worst(row, column, 'late'),
        perYear: nuisance?.cells[row]?.[column]?.perYear ?? Number.NaN,
      })),
    )
    .filter(({ seconds, perYear }) => Number.isFinite(seconds) && !Number.isNaN(perYear));
}
