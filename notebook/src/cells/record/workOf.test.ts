import { parseSite } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { freshCell, freshStructure } from '../../sheet/sheet.js';
import { workOf } from './workOf.js';

const beam = (id: string) => ({ id, layout: 'reflective', separation: 40 });
const site = parseSite({ format: 'beamkeep-site/1', name: 'Hall', beams: [beam('north'), beam('south')] });
const scan = { name: 'scan.csv', text: 'pan,level\n' };

describe('workOf', () => {
  it('leaves out cells that hold no file yet', () => {
    const cells = (['aim', 'covered', 'proof', 'findings'] as const).map((kind) => freshCell(kind));
    expect(
      workOf(
        cells.map((cell, row) => ({ number: row + 1, cell })),
        site,
      ),
    ).toEqual([]);
  });

  it('asks of the beam that the cell shows', () => {
    const structure = { ...freshStructure, span: '18' };
    const cell = freshCell('aim', { beam: null, scan, left: '0,5', structure });
    expect(workOf([{ number: 3, cell }], site)).toMatchObject([
      { number: 3, kind: 'aim', beam: 'north', scan, left: [0.5], structure: { spanMetres: 18 } },
    ]);
  });
});
