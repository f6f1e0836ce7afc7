import { describe, expect, it } from 'vitest';
import { minute } from '../columns/index.js';
import { ChannelMeans } from './channelMeans.js';

describe('ChannelMeans', () => {
  it('one row a minute, at the mean time of its readings', () => {
    const means = new ChannelMeans(minute);
    means.add(Float64Array.of(0, 20_000, 40_000), Float64Array.of(1, 2, 6), 3);
    means.add(Float64Array.of(60_000, 90_000), Float64Array.of(Number.NaN, 5), 2);
    expect(means.channel()).toEqual({ time: Float64Array.of(20_000, 90_000), value: Float64Array.of(3, 5) });
  });
  it('a slow reading stays as it is', () => {
    const means = new ChannelMeans(minute);
    means.add(Float64Array.of(0, 300_000), Float64Array.of(1, 2), 2);
    expect(means.channel()).toEqual({ time: Float64Array.of(0, 300_000), value: Float64Array.of(1, 2) });
  });
});
