/*
 * How much of the light is lost when the head turns away from the peak. Real lobes are not Gaussian: some are flatter
 * on top, some have long skirts, some are wider than high, some lean. Angles are in half-angles: at 1 the received
 * level has halved, whatever the shape.
 */

/** Shape of a received lobe. */
export interface Lobe {
  readonly shape: 'gaussian' | 'flat-topped' | 'skirted' | 'ringed';
  /** Power of a flat-topped lobe: 2 is a Gaussian, 4 is flat as a table. */
  readonly power: number;
  /** Half-angle upwards over half-angle sideways. */
  readonly tall: number;
  /** How much narrower the lobe is on its positive side, 0 to 0.3. */
  readonly lean: number;
}

/** A plain Gaussian, which every lobe is near its peak. */
export const gaussianLobe: Lobe = { shape: 'gaussian', power: 2, tall: 1, lean: 0 };

const half = 10 * Math.log10(2);
/** Argument at which a ringed lobe, (2 J1(x) / x)^2, has halved. */
const ring = 1.61633995;

/**
 * Loss of aim [dB], 0 on the peak and 3.01 at one half-angle on either axis (of a lobe that does not lean).
 *
 * @param x turn sideways [half-angles]
 * @param y turn upwards [half-angles]
 */
export function aimLoss({ shape, power, tall, lean }: Lobe, x: number, y: number): number {
  const side = x * (x > 0 ? 1 + lean : 1 - lean);
  const up = y / tall;
  const squared = side * side + up * up;
  switch (shape) {
    case 'gaussian':
      return half * squared;
    case 'flat-topped':
      return half * squared ** (power / 2);
    case 'skirted':
      return 10 * Math.log10(1 + squared);
    case 'ringed':
      return ringedLoss(Math.sqrt(squared) * ring);
  }
}

/** -20 log10(2 J1(x) / x) by its power series; past the first ring's edge the loss no longer grows. */
function ringedLoss(argument: number): number {
  const x = Math.min(argument, 3);
  const q = (x * x) / 4;
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 12; k++) {
    term *= -q / (k * (k + 1));
    sum += term;
  }
  return -20 * Math.log10(sum) + 3 * (argument - x);
}
