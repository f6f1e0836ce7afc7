import { describe, expect, it } from 'vitest';
import { meant, nearest } from './nearest.js';

describe('nearest', () => {
  it('finds the word that was meant', () =>
    expect(nearest('alarmTreshold', ['faultThreshold', 'alarmThreshold'])).toBe('alarmThreshold'));
  it('does not mind capitals', () => expect(nearest('TIMEZONE', ['timeZone', 'name'])).toBe('timeZone'));
  it('has nothing to say where nothing is known', () => expect(nearest('x', [])).toBeUndefined());
});

describe('meant', () => {
  it('is silent where nothing is near', () => expect(meant('round', ['reflective', 'end-to-end'])).toBeUndefined());
  it('names a near word', () => expect(meant('clean', ['cleaned', 'reset'])).toBe('cleaned'));
  it('has nothing to say where nothing is known', () => expect(meant('x', [])).toBeUndefined());
});
