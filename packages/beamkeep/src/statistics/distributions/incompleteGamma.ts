import { gammaln } from 'simple-statistics';

/*
 * The two functions behind every distribution here: the incomplete gamma function (normal, chi-square, Poisson) and the
 * incomplete beta function (Student, binomial). Each has a series or a continued fraction that settles within some tens
 * of terms on its side of the mean; the other side follows by subtraction from 1, which is why both tails are given.
 */

/** Least change that still matters in a sum or a fraction of doubles. */
const settled = 1e-16;
const mostTerms = 100_000;
/** Stands for 0 in a denominator of a continued fraction (Lentz, as modified by Thompson and Barnett). */
const tiny = 1e-300;

/** Share of a distribution below and above a value; each keeps its digits where it is small. */
export interface Tails {
  readonly below: number;
  readonly above: number;
}

/**
 * Regularised incomplete gamma functions P(a, x) below and Q(a, x) above.
 *
 * @param a shape, above 0
 * @param x 0 or more
 *
 * Source: NIST Digital Library of Mathematical Functions, 8.7.1 (series) and 8.9.2 (fraction), from memory.
 */
export function incompleteGamma(a: number, x: number): Tails {
  if (x === 0) return { below: 0, above: 1 };
  if (x === Number.POSITIVE_INFINITY) return { below: 1, above: 0 };
  const front = Math.exp(a * Math.log(x) - x - gammaln(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < mostTerms && term > sum * settled; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return { below: front * sum, above: 1 - front * sum };
  }
  const fraction = continuedFraction(
    x + 1 - a,
    (n) => n * (a - n),
    (n) => x + 2 * n + 1 - a,
  );
  return { below: 1 - front / fraction, above: front / fraction };
}

/**
 * Regularised incomplete beta functions I(x; a, b) below and its complement above.
 *
 * @param x 0 to 1
 * @param a above 0
 * @param b above 0
 *
 * Source: NIST Digital Library of Mathematical Functions, 8.17.22 (fraction) and 8.17.4 (symmetry), from memory.
 */
export function incompleteBeta(x: number, a: number, b: number): Tails {
  if (x <= 0) return { below: 0, above: 1 };
  if (x >= 1) return { below: 1, above: 0 };
  if (x > (a + 1) / (a + b + 2)) {
    const { below, above } = incompleteBeta(1 - x, b, a);
    return { below: above, above: below };
  }
  const front = Math.exp(gammaln(a + b) - gammaln(a) - gammaln(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  const fraction = continuedFraction(
    1,
    (n) => {
      const m = Math.floor(n / 2);
      return n % 2 === 0
        ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
        : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    },
    () => 1,
  );
  return { below: front / fraction, above: 1 - front / fraction };
}

/** b0 + a1 / (b1 + a2 / (b2 + ...)), from the front until it no longer moves. */
function continuedFraction(b0: number, a: (n: number) => number, b: (n: number) => number): number {
  let value = b0 === 0 ? tiny : b0;
  let upper = value;
  let lower = 0;
  for (let n = 1; n < mostTerms; n++) {
    const denominator = b(n) + a(n) * lower;
    lower = 1 / (denominator === 0 ? tiny : denominator);
    upper = b(n) + a(n) / upper;
    if (upper === 0) upper = tiny;
    const step = upper * lower;
    value *= step;
    if (Math.abs(step - 1) < settled) break;
  }
  return value;
}
