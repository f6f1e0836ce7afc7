/*
 * The fast Fourier transform on typed arrays, planned once for a length. Powers of two by halving (radix 2, in place);
 * every other length as a convolution of a power of two (Bluestein), so that a segment of 100 samples is no trouble.
 *
 *     X[k] = sum over n of x[n] exp(-2 pi i k n / length)
 *
 * Sources: Cooley and Tukey, Mathematics of Computation 19 (1965); Bluestein, IEEE Transactions on Audio and
 * Electroacoustics 18 (1970) (both from memory).
 */

/** Transforms real and imaginary parts in place. */
export type Transform = (real: Float64Array, imaginary: Float64Array) => void;

/**
 * Plans the transform of one length; the plan can be used again and again.
 *
 * @param length number of samples, 1 or more
 * @example const transform = fourierTransform(8); transform(real, imaginary);
 */
export function fourierTransform(length: number): Transform {
  return Number.isInteger(Math.log2(length)) ? byHalving(length) : byConvolution(length);
}

/** Cosine and sine of a share of a turn, for each of `count` steps. */
function turns(count: number, shareOf: (step: number) => number): { cos: Float64Array; sin: Float64Array } {
  const angle = Float64Array.from({ length: count }, (_, step) => 2 * Math.PI * shareOf(step));
  return { cos: angle.map(Math.cos), sin: angle.map(Math.sin) };
}

function byHalving(length: number): Transform {
  const { cos, sin } = turns(length / 2, (step) => step / length);
  const mirrored = new Uint32Array(length); // row numbers with their bits in reverse order
  for (let i = 1, bits = Math.log2(length); i < length; i++) {
    mirrored[i] = ((mirrored[i >>> 1] as number) >>> 1) | ((i & 1) << (bits - 1));
  }
  const swapped = (values: Float64Array) => {
    for (let i = 0; i < length; i++) {
      const j = mirrored[i] as number;
      if (j > i) {
        const held = values[i] as number;
        values[i] = values[j] as number;
        values[j] = held;
      }
    }
  };
  return (real, imaginary) => {
    swapped(real);
    swapped(imaginary);
    for (let half = 1, stride = length / 2; half < length; half *= 2, stride /= 2) {
      for (let start = 0; start < length; start += 2 * half) {
        for (let k = 0; k < half; k++) {
          const c = cos[k * stride] as number;
          const s = sin[k * stride] as number;
          const a = start + k;
          const b = a + half;
          const re = (real[b] as number) * c + (imaginary[b] as number) * s;
          const im = (imaginary[b] as number) * c - (real[b] as number) * s;
          real[b] = (real[a] as number) - re;
          imaginary[b] = (imaginary[a] as number) - im;
          real[a] = (real[a] as number) + re;
          imaginary[a] = (imaginary[a] as number) + im;
        }
      }
    }
  };
}

function byConvolution(length: number): Transform {
  const padded = 2 ** Math.ceil(Math.log2(2 * length - 1));
  const transform = byHalving(padded);
  // n k = (n^2 + k^2 - (k - n)^2) / 2: the squares, counted modulo twice the length to keep their digits
  const { cos, sin } = turns(length, (n) => ((n * n) % (2 * length)) / (2 * length));
  const kernelReal = new Float64Array(padded);
  const kernelImaginary = new Float64Array(padded);
  for (let n = 0; n < length; n++) {
    for (const place of n === 0 ? [0] : [n, padded - n]) {
      kernelReal[place] = cos[n] as number;
      kernelImaginary[place] = sin[n] as number;
    }
  }
  transform(kernelReal, kernelImaginary);
  return (real, imaginary) => {
    const a = new Float64Array(padded);
    const b = new Float64Array(padded);
    for (let n = 0; n < length; n++) {
      a[n] = (real[n] as number) * (cos[n] as number) + (imaginary[n] as number) * (sin[n] as number);
      b[n] = (imaginary[n] as number) * (cos[n] as number) - (real[n] as number) * (sin[n] as number);
    }
    transform(a, b);
    for (let k = 0; k < padded; k++) {
      const re = (a[k] as number) * (kernelReal[k] as number) - (b[k] as number) * (kernelImaginary[k] as number);
      const im = (a[k] as number) * (kernelImaginary[k] as number) + (b[k] as number) * (kernelReal[k] as number);
      a[k] = re;
      b[k] = -im; // conjugate: the forward transform then undoes itself
    }
    transform(a, b);
    for (let n = 0; n < length; n++) {
      const re = (a[n] as number) / padded;
      const im = -(b[n] as number) / padded;
      real[n] = re * (cos[n] as number) + im * (sin[n] as number);
      imaginary[n] = im * (cos[n] as number) - re * (sin[n] as number);
    }
  };
}
