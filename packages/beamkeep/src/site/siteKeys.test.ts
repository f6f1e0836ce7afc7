import { describe, expect, it } from 'vitest';
import { cleanAirDefaults, siteDefaults } from './siteDefaults.js';
import { beamKeys, siteKeys } from './siteKeys.js';

describe('the table of keys', () => {
  it('says of each key what it means, and what holds without it', () => {
    for (const { key, meaning, required, whenLeftOut, kind, words, unit } of siteKeys) {
      expect(meaning, key).not.toBe('');
      expect(whenLeftOut !== undefined, key).toBe(!required);
      expect(words !== undefined, key).toBe(kind === 'word' || kind === 'compensation');
      expect(unit !== '', key).toBe(kind === 'number');
    }
  });

  it('names the defaults that are used', () => {
    for (const [key, value] of Object.entries(siteDefaults)) {
      const row = siteKeys.find((known) => known.key === key);
      expect(row?.whenLeftOut, key).toBe(String(value));
    }
    for (const [unit, reading] of Object.entries(cleanAirDefaults))
      if (reading !== undefined) expect(beamKeys.cleanAir.whenLeftOut).toContain(`${unit} ${reading}`);
  });
});
