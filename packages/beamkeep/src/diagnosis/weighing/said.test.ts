import { describe, expect, it } from 'vitest';
import { said } from './said.js';

const claim = { confidence: 0.7, severity: 'act' } as const;

describe('said', () => {
  it('a statement keeps its severity', () =>
    expect(said('obstruction', claim, 1, () => 0.5)).toEqual({ confidence: 0.5, severity: 'act' }));
  it('a possibility is a note', () =>
    expect(said('obstruction', claim, 1, () => 0.4)).toEqual({ confidence: 0.4, severity: 'note' }));
  it('what is too unlikely is not said', () => expect(said('obstruction', claim, 1, () => 0.05)).toBeUndefined());
  it('nothing but smoke is said to be certain', () =>
    expect(said('process-aerosol', claim, 1, () => 0.999)).toEqual({ confidence: 0.99, severity: 'act' }));
  it('smoke is said at any confidence, at its own severity', () =>
    expect(said('smoke-like', claim, 1, () => 0.001)).toEqual({ confidence: 0.001, severity: 'act' }));
});
