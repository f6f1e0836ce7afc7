import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { plainScenario } from '../plainScenario.js';
import { siteFile } from './siteFile.js';

describe('siteFile', () => {
  it('is a site file as the library reads it', () => {
    const scenario = plainScenario(
      { visits: [{ time: Date.UTC(2027, 0, 8, 9), beam: 'B1', work: 'cleaned' }] },
      { unit: 'counts', cleanAir: 2100, covered: 0.01, gainControl: { hours: 50, limitDecibels: 2, column: 'gain' } },
    );
    const site = parseSite(JSON.stringify(siteFile(scenario)));
    const [beam] = site.beams;
    expect(site.timeZone).toBe('Europe/Lisbon');
    expect(beam?.covered).toBe(21);
    expect(beam?.compensation).toEqual({ limitDecibels: 2 });
    expect(beam?.gainColumn).toBe('gain');
    expect(site.visits[0]?.time).toBe(Date.UTC(2027, 0, 8, 9));
  });

  it('says that it is invented and leaves out what nobody wrote', () => {
    const file = siteFile(plainScenario({ untold: ['latitude', 'longitude'] }, { untold: ['halfAngle', 'cleanAir'] }));
    const { name, beams } = file;
    expect(name).toContain('(invented)');
    expect(Object.keys(file)).not.toContain('latitude');
    const [beam] = beams as Record<string, unknown>[];
    expect(Object.keys(beam ?? {})).not.toContain('halfAngle');
  });
});
