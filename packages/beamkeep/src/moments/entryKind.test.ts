import { describe, expect, it } from 'vitest';
import { entryKind } from './entryKind.js';

describe('entryKind', () => {
  it.each([
    ['fire', 'fire'],
    [' FIRE  Alarm ', 'fire'],
    ['Trouble', 'fault'],
    ['fault', 'fault'],
    ['Reset', 'reset'],
    ['alarm test', 'other'],
    ['fault cleared', 'other'],
    ['', 'other'],
    ['constructor', 'other'],
  ])('"%s" is %s', (what, kind) => expect(entryKind(what)).toBe(kind));
});
