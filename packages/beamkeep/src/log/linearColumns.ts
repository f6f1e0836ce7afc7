import { type Beam, linearReading } from '../site/index.js';

/**
 * Turns columns of readings into readings proportional to received power. Where the unit is that already, the column
 * is passed on as it is; the others share one buffer each, good until the next call.
 */
export function linearColumns(beams: readonly Beam[]) {
  const buffers: Float64Array[] = beams.map(() => new Float64Array(0));
  return (columns: readonly Float64Array[], count: number): Float64Array[] =>
    beams.map(({ signalUnit }, at) => {
      const readings = columns[at] as Float64Array;
      if (signalUnit !== 'decibels' && signalUnit !== 'obscuration') return readings;
      let linear = buffers[at] as Float64Array;
      if (linear.length < count) {
        linear = new Float64Array(count);
        buffers[at] = linear;
      }
      for (let row = 0; row < count; row++) linear[row] = linearReading(readings[row] as number, signalUnit);
      return linear;
    });
}
