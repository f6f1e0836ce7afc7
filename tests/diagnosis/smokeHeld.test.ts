import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, recordOf, rise } from './kit.js';

/*
 * Smoke that has grown and stays is no knock and no dirt: whatever the sampling, the pace and the time it has stood, it
 * is told, as going on, and is to be acted upon. The growth is never quicker than two samples show, nor slower than the
 * 0.02 dB a minute below which it is told as dirt.
 */

const growths = [1, 5, 15, 30, 60, 120].flatMap((minutes) =>
  [0.3, 0.5, 1, 2].filter((dB) => (0.8 * dB) / minutes >= 0.02).map((dB) => ({ minutes, dB })),
);
const held = [0.3, 1, 3, 8, 20];

describe.each([
  { interval: 60, days: 8 },
  { interval: 300, days: 12 },
])('smoke that stays to the end of a log with a sample each $interval s', ({ interval, days }) => {
  const shown = growths.filter(({ minutes }) => 60 * minutes >= 2 * interval);
  it.each(shown)('is acted upon after $dB dB in $minutes min', ({ minutes, dB }) => {
    for (const hours of held) {
      const top = at(days - 1, 24 - hours);
      const log = recordOf((t) => left(dB * rise(t, top - 60_000 * minutes, top)), { days, intervalSeconds: interval });
      const told = diagnosed(log).findings.filter((f) => f.cause === 'smoke-like');
      expect(told, `held ${hours} h`).toContainEqual(expect.objectContaining({ severity: 'act', ongoing: true }));
    }
  });
});
