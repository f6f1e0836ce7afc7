import { describe, expect, it } from 'vitest';
import { beamOfSheet } from './beamOfSheet.js';

describe('beamOfSheet', () => {
  it.each([
    ['{"beam": "B2", "steps": []}', 'B2'],
    ['{"beam": 2}', null],
    ['[]', null],
    ['null', null],
    ['{"beam": ', null],
  ])('%s', (text, beam) => expect(beamOfSheet(text)).toBe(beam));
});
