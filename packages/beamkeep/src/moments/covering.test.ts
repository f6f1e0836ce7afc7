import { describe, expect, it } from 'vitest';
import { hour, minute } from '../columns/index.js';
import { covering, type Told } from './covering.js';

const day = 24 * hour;
const told = (cause: string, start: number, end: number, confidence: number, more: Partial<Told> = {}): Told => ({
  cause,
  start,
  end,
  confidence,
  summary: cause,
  ...more,
});
const order = (findings: readonly Told[], from: number, to = from, reach = 5 * minute) =>
  covering(findings, from, to, reach).map(({ finding }) => finding.cause);

describe('covering', () => {
  const dirt = told('contamination', 0, 60 * day, 0.97);
  const light = told('ambient-light', 10 * day, 30 * day, 0.9, {
    episodes: [
      [10 * day, 10 * day + 20 * minute],
      [30 * day - 20 * minute, 30 * day],
    ],
  });
  it('puts what is short before what goes on for months', () =>
    expect(order([dirt, light], 10 * day + 5 * minute)).toEqual(['ambient-light', 'contamination']));
  it('asks of what recurs whether it came then', () =>
    expect(order([dirt, light], 20 * day)).toEqual(['contamination']));
  it('puts smoke before all else there, sure or not', () =>
    expect(order([dirt, light, told('smoke-like', 10 * day, 10 * day + hour, 0.03)], 10 * day + 5 * minute)[0]).toBe(
      'smoke-like',
    ));
  it('puts what is near behind what is there, and leaves out what is further', () => {
    const smoke = told('smoke-like', 10 * day + 8 * minute, 10 * day + hour, 0.9);
    expect(order([smoke, light], 10 * day + 5 * minute)).toEqual(['ambient-light', 'smoke-like']);
    expect(order([smoke, light], 10 * day + 5 * minute, 10 * day + 5 * minute, minute)).toEqual(['ambient-light']);
  });
  it('puts what begins there before what goes on', () => {
    const knock = told('misalignment-step', 12 * day, 60 * day, 0.9);
    expect(order([dirt, knock], 12 * day - minute)).toEqual(['misalignment-step', 'contamination']);
    expect(order([dirt, knock], 40 * day)).toEqual(['contamination', 'misalignment-step']);
  });
});
