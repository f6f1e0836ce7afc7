import type { Random } from '../random.js';
import { plainRecording, type Recording } from '../recording/recording.js';
import type { Ranges } from './ranges.js';

/** A logger with its habits and its faults. */
export function drawRecording(ranges: Ranges, draw: Random, intervalSeconds: number): Recording {
  const clock = draw.weighted(ranges.clocks);
  const separator = draw.weighted<Recording['separator']>([
    [',', 5],
    [';', 3],
    ['\t', 2],
  ]);
  const fine = intervalSeconds < 1 || draw.chance(0.15);
  const rate = () => (draw.chance(ranges.faults.share) ? draw.logBetween(...ranges.faults.rate) : 0);
  const twoColumns = clock !== 'unix-seconds' && clock !== 'unix-milliseconds' && draw.chance(0.06);
  return {
    ...plainRecording,
    jitter: draw.chance(0.4) ? 0 : draw.logBetween(...ranges.jitter),
    drift: draw.chance(0.3) ? draw.normal() * 2e-5 : 0,
    tick: fine ? 1 : 1000,
    sampling: draw.weighted([
      ['regular', 70],
      ['mean', 26],
      ['on-change', intervalSeconds >= 1 ? 4 : 0],
    ]),
    clock,
    timeColumn: twoColumns ? ['date', 'clock'] : draw.pick(['time', 'Time', 'timestamp', 'date']),
    separator,
    decimalComma: separator !== ',' && draw.chance(0.35),
    percentSign: draw.chance(0.04),
    byteOrderMark: draw.chance(0.2),
    lineEnd: draw.chance(0.25) ? '\r\n' : '\n',
    missing: draw.pick(['', '', 'NaN', 'NA', 'null']),
    longForm: draw.chance(0.03),
    sideFirst: draw.chance(0.3),
    lost: rate(),
    doubled: rate(),
    displaced: rate(),
    broken: rate() / 4,
  };
}
