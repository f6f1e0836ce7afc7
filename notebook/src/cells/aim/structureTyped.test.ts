import { describe, expect, it } from 'vitest';
import { freshStructure } from '../../sheet/sheet.js';
import { structureTyped, typedOf } from './structureTyped.js';

describe('structureTyped', () => {
  it('takes what is known, with points or commas, and leaves out what is empty', () => {
    expect(structureTyped({ ...freshStructure, span: '18,5', frame: ' 9.4 ' })).toEqual({
      structure: { roof: 'roofNoCeiling', material: 'steel', spanMetres: 18.5, heightMetres: 9.4 },
      refused: [],
    });
  });
  it('names what is no number above 0', () => {
    const { structure, refused } = structureTyped({ ...freshStructure, span: '-3', depth: 'deep', member: '20' });
    expect(refused).toEqual(['span', 'depth']);
    expect(structure).toEqual({ roof: 'roofNoCeiling', material: 'steel', lengthMetres: 20 });
  });
});

describe('typedOf', () => {
  it('shows a structure so that typing it again gives the same', () => {
    const structure = { spanMetres: 18, heightMetres: 9.4, roof: 'floor', material: 'concrete' } as const;
    expect(structureTyped(typedOf(structure)).structure).toEqual(structure);
    expect(typedOf()).toEqual(freshStructure);
  });
});
