import { parseSite } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { chosenBeam } from './chosenBeam.js';

const beam = (id: string) => ({ id, layout: 'reflective', separation: 40 });
const site = parseSite({ format: 'beamkeep-site/1', name: 'Hall', beams: [beam('north'), beam('south')] });

describe('chosenBeam', () => {
  it('is the chosen one, or the first where the site does not have it', () => {
    expect(chosenBeam(site, 'south')).toBe('south');
    expect(chosenBeam(site, 'west')).toBe('north');
    expect(chosenBeam(site, null)).toBe('north');
  });
});
