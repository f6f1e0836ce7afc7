import { hour } from '../../columns/index.js';
import { chiSquareProbability, median, quantile } from '../../statistics/index.js';
import type { Picture } from '../picture.js';
import { freedomOf, isTwoSided, type Roughness, type Run, spreadQuantile } from '../roughness.js';
import { leaning, shaken, spreadShape } from './spreadShape.js';

/** A stretch in which the samples spread more, up and down alike. */
export interface RoughStretch {
  readonly start: number;
  readonly end: number;
  readonly from: number;
  readonly to: number;
  /** Spread of the samples over the usual. */
  readonly times: number;
  /** Spread of the samples, share of clean air. */
  readonly spread: number;
  /** Greatest deviation of a run over its spread, upper quartile: 1.4 for a sine, 3 and more for spikes. */
  readonly crest: number;
  /** How steadily the course repeats itself, from its autocorrelation: near 1 for a steady swing, near 0 for noise. */
  readonly swing: number;
  /** Share of its runs that spread up and down alike. */
  readonly twoSided: number;
  /** How clearly the samples lie as a shaking mount leaves them, though none follows from the last: 0 to 1. */
  readonly shaken: number;
}

/** Rows looked at for a swing, the longest lag [rows], and stretches of rows looked at: own choice. */
const swingRows = 2048;
const swingLag = 128;
const swingLooks = 9;

/** A swing. */
interface Swing {
  /** Least autocorrelation, sign turned; or half of its greatest climb from a lag to a later one, where that is larger. */
  readonly size: number;
  /** Autocorrelation at twice the lag of the least, or at the top of the climb: as large as `size` where the swing goes on. */
  readonly again: number;
}

/** How clearly a swing comes round again: what does not was chance, or one slow bend. */
const comesRound = ({ size, again }: Swing): number => Math.min(size, 2 * Math.max(0, again));

/** Autocorrelation from which a course repeats itself, whatever its shape, once it had turned as far as that. Own choice. */
const repeats = 0.6;
const turns = -0.15;

function swingOf(own: Float64Array): Swing {
  let sum = 0;
  for (const v of own) sum += v;
  const mean = sum / own.length;
  const off = new Float64Array(own.length);
  let power = 0;
  for (let i = 0; i < own.length; i++) {
    const v = (own[i] as number) - mean;
    off[i] = v;
    power += v * v;
  }
  const alike = (products: number, lag: number): number =>
    (products / Math.max(power, 1e-12)) * (own.length / (own.length - lag));
  const products = lagProducts(off, Math.min(swingLag, own.length >> 2));
  let least = 0;
  let at = 1;
  // A mount that shakes across the peak dips twice in a turn, unequally: no lag turns such a course over, but one repeats it.
  let round: Swing = { size: 0, again: 0 };
  for (let lag = 1; lag < products.length; lag++) {
    const r = alike(products[lag] as number, lag);
    if (r < least) {
      least = r;
      at = lag;
    }
    if (least < turns && r > repeats && (r - least) / 2 > round.size) round = { size: (r - least) / 2, again: r };
  }
  const turned = { size: -least, again: 2 * at < own.length ? alike(together(off, 2 * at, off.length), 2 * at) : 0 };
  return comesRound(round) > comesRound(turned) ? round : turned;
}

/** How steadily the runs swing: the middle of some looks, each at runs that follow one another. */
function steadySwing(depth: Float64Array, runs: readonly Run[], own: readonly number[]): number {
  const sizes: number[] = [];
  // An object in the path spreads its runs far more than a shake does.
  const most = 4 * median(Float64Array.from(own, (k) => (runs[k] as Run).spread));
  const every = Math.max(1, Math.ceil(own.length / swingLooks));
  for (let j = 0; j < own.length; j += every) {
    const first = runs[own[j] as number];
    let last = first;
    for (let k = j; k < own.length && (own[k] as number) - (own[j] as number) === k - j; k++) {
      const next = runs[own[k] as number];
      if (first === undefined || next === undefined || next.spread > most) break;
      last = next;
      if (last.to - first.from >= swingRows) break;
    }
    if (first === undefined || last === undefined) continue;
    sizes.push(comesRound(swingOf(depth.subarray(first.from, Math.min(last.to + 1, first.from + swingRows)))));
  }
  return median(Float64Array.from(sizes)) || 0;
}

/** Most rows of a log that is looked through for swings as small as its noise, and its longest interval [ms]: own choice. */
const mostRows = 300_000;
const fastInterval = 1000;
/** Runs looked at together. */
const runsTogether = 4;

/** Runs of a fast log that swing on and on, though they spread no more than the noise does. */
function swinging({ rough: { runs }, depth, view }: Picture): Set<number> {
  const found = new Set<number>();
  // A row that stands for many samples shows no swing.
  const condensed = view.trace.count.some((count) => count > 1);
  if (view.interval > fastInterval || depth.length > mostRows || condensed) return found;
  for (const size of [1, runsTogether]) {
    for (let k = 0; k + size <= runs.length; k += size) {
      const own = depth.subarray((runs[k] as Run).from, (runs[k + size - 1] as Run).to + 1);
      const { size: swing, again } = swingOf(own);
      if (swing < leastSwing(own.length) || again < 0.5 * swing) continue;
      for (let j = k; j < k + size; j++) found.add(j);
    }
  }
  return found;
}

/** Least swing of so many rows that noise does not have by chance: a third, and 3.5 spreads of an autocorrelation. */
const leastSwing = (rows: number): number => 0.3 + 3.5 / Math.sqrt(rows);

/** Sum of the products of values so many rows apart, the later of them before row `to`. */
function together(off: Float64Array, lag: number, to: number): number {
  let sum = 0;
  for (let i = lag; i < to; i++) sum += (off[i] as number) * (off[i - lag] as number);
  return sum;
}

/**
 * `together` for each lag up to `most`, a quarter of the rows at most. Four lags go side by side: each sum is made in
 * the order it would have alone, and the processor need not wait for one of them.
 */
function lagProducts(off: Float64Array, most: number): Float64Array {
  const products = new Float64Array(most + 1);
  let lag = 1;
  for (; lag + 3 <= most; lag += 4) fourTogether(off, lag, products);
  for (; lag <= most; lag++) products[lag] = together(off, lag, off.length);
  return products;
}

/** The sums of a lag and of the three after it. */
function fourTogether(off: Float64Array, lag: number, into: Float64Array): void {
  const from = lag + 3;
  let a = together(off, lag, from);
  let b = together(off, lag + 1, from);
  let c = together(off, lag + 2, from);
  let d = 0;
  for (let i = from; i < off.length; i++) {
    const v = off[i] as number;
    a += v * (off[i - lag] as number);
    b += v * (off[i - lag - 1] as number);
    c += v * (off[i - lag - 2] as number);
    d += v * (off[i - from] as number);
  }
  into[lag] = a;
  into[lag + 1] = b;
  into[lag + 2] = c;
  into[from] = d;
}

/** Of each beam once, though two causes ask. */
const known = new WeakMap<Picture, readonly RoughStretch[]>();

/** The rough stretches of a beam, runs a few apart joined. */
export function roughStretches(picture: Picture): readonly RoughStretch[] {
  const found = known.get(picture) ?? findRoughStretches(picture);
  known.set(picture, found);
  return found;
}

function findRoughStretches(picture: Picture): RoughStretch[] {
  const { rough, view, slowLimit, depth, parts } = picture;
  const { runs, usual } = rough;
  const swingingRuns = swinging(picture);
  const { time, until } = view.trace;
  const joined: { runs: number[] }[] = [];
  runs.forEach((run, k) => {
    // A step within a run spreads it, and is no noise.
    if (parts.steps.some((s) => s.row >= run.from - 1 && s.row <= run.to + 1)) return;
    if ((run.spread <= 2 * usual && !swingingRuns.has(k)) || run.up + run.down < 1.6 * slowLimit) return;
    const last = joined.at(-1);
    const before = last?.runs.at(-1);
    if (last !== undefined && before !== undefined && k - before <= 4) last.runs.push(k);
    else joined.push({ runs: [k] });
  });
  const stretches = joined
    .filter((j) => j.runs.length >= 2)
    .filter(({ runs: own }) => own.some((k) => swingingRuns.has(k)) || isBeyondChance(rough, own))
    .map((j) => ({ ...j, own: j.runs.map((k) => runs[k]).filter((r) => r !== undefined) }));
  const beam = spreadShape(
    depth,
    stretches.flatMap(({ own }) => own),
  );
  return (
    stretches
      .map(({ runs: numbers, own }) => {
        const from = own[0]?.from ?? 0;
        const to = own.at(-1)?.to ?? 0;
        const spread = Math.sqrt(own.reduce((a, r) => a + r.spread ** 2, 0) / own.length);
        const twoSided = own.filter((r) => isTwoSided(r, usual)).length / own.length;
        return {
          start: time[from] as number,
          end: until[to] as number,
          from,
          to,
          times: spread / usual,
          spread,
          crest: quantile(
            Float64Array.from(own, (r) => crestOf(depth.subarray(r.from, r.to + 1))),
            0.75,
          ),
          swing: steadySwing(depth, runs, numbers),
          twoSided,
          shaken: shaken(leaning(spreadShape(depth, own), beam, own.length), twoSided),
        };
      })
      .filter((r) => r.end - r.start < 400 * hour || r.times > 2.5)
      // What only takes light is dust, unless it swings or comes back between samples: a mount that shakes about the peak.
      .filter((r) => r.twoSided >= 0.5 || r.shaken > 0.5 || (r.swing > 0.45 && swings(r)))
  );
}

/** How many stretches as rough as those that count may come of noise alone in a log. Own choice. */
const byChance = 0.001;

/** Whether some runs, and those between, spread more than the roughest of so many runs of one noise do by chance. */
function isBeyondChance({ runs, usual }: Roughness, own: readonly number[]): boolean {
  const between = runs.slice(own[0], (own.at(-1) ?? 0) + 1);
  const [first] = between;
  if (first === undefined) return false;
  const rows = first.to + 1 - first.from;
  const freedom = freedomOf(rows);
  // The usual spread is one that three of four runs of one noise pass.
  const noise = usual / spreadQuantile(0.25, rows);
  let squares = 0;
  for (const { spread } of between) squares += freedom * (spread / noise) ** 2;
  return (1 - chiSquareProbability(squares, freedom * between.length)) * runs.length < byChance;
}

/** Half the range of values over their standard deviation. */
function crestOf(values: Float64Array): number {
  let [least, most, sum, squares] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (const v of values) {
    least = Math.min(least, v);
    most = Math.max(most, v);
    sum += v;
    squares += v * v;
  }
  const n = values.length;
  return (most - least) / 2 / Math.sqrt(Math.max(1e-18, squares / n - (sum / n) ** 2));
}

/** Whether neighbours follow each other up and down, without spikes. */
const swings = (r: RoughStretch): boolean =>
  r.swing > leastSwing(Math.min(r.to - r.from + 1, swingRows)) && r.crest < 3.5;

/** Whether a rough stretch is a swing rather than noise: by the order of its samples, or by how they lie. */
export const isShaking = (r: RoughStretch): boolean => swings(r) || r.shaken > 0.5;

/** Share of few runs that must spread up and down alike, and rows from which they are not few. Own choice. */
const mostAlike = 0.6;
const manyRows = 120;
/** Whether a stretch is noise: of two or three runs one spreads both ways by chance where a swing or dust is left over. */
const isNoisy = (r: RoughStretch): boolean => r.twoSided >= mostAlike || r.to - r.from >= manyRows;

/** Share of a beam's rough rows from which those that look shaken are: fewer are noise that swung by chance. Own choice. */
const leastShaking = 0.15;

/** The rough stretches of a beam by what they are: shaking or noise. */
export function shakingOrNoise(picture: Picture): { readonly shaking: RoughStretch[]; readonly noise: RoughStretch[] } {
  const all = roughStretches(picture);
  const shaking = all.filter(isShaking);
  const rows = (of: readonly RoughStretch[]): number => of.reduce((sum, r) => sum + r.to - r.from + 1, 0);
  return rows(shaking) < leastShaking * rows(all)
    ? { shaking: [], noise: all.filter(isNoisy) }
    : { shaking, noise: all.filter((r) => !isShaking(r) && isNoisy(r)) };
}
