import { describe, expect, it } from 'vitest';
import { gathered, siteOf } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, factsOf, itemsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import { footnotes } from '../footnotes.js';
import { settingsSection } from './settings.js';

function shown(settings: object = {}): string {
  const [beam] = gathered(siteOf(settings)).beams;
  if (!beam) throw new Error('no beam');
  return settingsSection(beam, footnotes()).markup;
}

describe('settingsSection', () => {
  it('tells every setting with its unit; what was not given is a gap', () =>
    expect(factsOf(shown())).toEqual({
      layout: 'reflective',
      separation: '62 m',
      'optical path': '124 m',
      'height above the floor': '9 m',
      'bearing, tilt': 'not given, not given',
      wavelength: '880 nm',
      'alarm threshold, delay': '35 %, 10 s',
      'fault threshold, delay': '90 %, 10 s',
      'alarm stays until reset': 'yes',
      'clean-air reading': '98 percent',
      'covered reading': '3.92 percent',
      'covered reading taken off': 'no',
      compensation: 'none',
      'half-angle by the site file': '0.7 deg',
    }));
  it('tells the others of each choice, and the limit of a compensation', () =>
    expect(
      factsOf(
        shown({
          layout: 'end-to-end',
          latching: false,
          coveredSubtracted: true,
          compensation: { limitDecibels: 1.25 },
          bearing: 90,
          tilt: -2,
        }),
      ),
    ).toMatchObject({
      'optical path': '62 m',
      'alarm stays until reset': 'no',
      'covered reading taken off': 'yes',
      compensation: 'ends at 1.25 dB',
      'bearing, tilt': '90 deg, -2 deg',
    }));
  it('names what is assumed, and says nothing where all is given', () => {
    expect(textOf(shown({ wavelength: 880 }))).not.toContain('Assumed');
    expect(textOf(shown({ wavelength: undefined, alarmDelay: undefined }))).toMatch(
      /Assumed, not given: .*alarmDelay 10 s.*wavelength 880 nm/,
    );
  });
  it('says the thresholds in the units of the trade: 35 % over 124 m is 1.87 dB', () => {
    const cells = cellsOf(shown());
    expect(cells.slice(0, 4)).toEqual([
      ['dB of the whole path', '1.87', '10'],
      ['dB/m of smoke', '0.0151', '0.0806'], // 1.8709 / 124 and 10 / 124
      ['%/ft of smoke', '0.106', '0.564'], // 1 - 0.65^(0.3048 / 124) and 1 - 0.1^(0.3048 / 124)
      ['optical density per metre', '0.00151', '0.00806'],
    ]);
    expect(cells[4]?.[0]).toBe('a reflecting sign can just be read at');
  });
  it('says how dirt moves the alarm: under 20 % of dirt 18.75 % of smoke alarms', () => {
    const words = textOf(shown());
    expect(words).toContain('with 10 % of dirt 27.8 % of smoke alarms, with 20 % of dirt 18.8 % of smoke alarms.');
    expect(words).toContain('Compensation may raise it to 49.8 % at most.'); // 1.6 x 1.8709 dB
  });
  it('counts the limits of standards, and lists those that are not kept or not known', () => {
    const markup = shown({ alarmThreshold: 8 });
    const words = textOf(markup);
    const [, all, kept, not] = words.match(/Of (\d+) limits of standards (\d+) are kept, (\d+) are not/) ?? [];
    const broken = itemsOf(markup).filter((item) => item.startsWith('not kept: '));
    expect(Number(not)).toBe(broken.length);
    expect(Number(all) - Number(kept)).toBe(itemsOf(markup).length);
    expect(broken).toEqual([
      expect.stringMatching(/^not kept: alarm threshold at least 0\.4 dB; here 0\.362 dB \(/),
      expect.stringMatching(/^not kept: alarm threshold at least 0\.4 dB; here 0\.362 dB \(/),
      expect.stringMatching(/^not kept: alarm threshold at least 1 dB; here 0\.362 dB \(.*from memory\)$/),
      expect.stringMatching(/^not kept: no alarm within 30 s from a filter of/),
    ]);
    expect(markup).toContain('<b>not kept</b>');
  });
  it('what cannot be compared says what is missing here', () => {
    const items = itemsOf(shown({ compensation: 'unknown' }));
    expect(items).toContainEqual(
      expect.stringMatching(/^not known: compensation that ends, .* 1\.12 dB; here not given \(/),
    );
    expect(items).toContainEqual(
      expect.stringMatching(
        /^not known: a rule of its own for sensitivity by length, neither seen nor remembered \(UL 268/,
      ),
    );
  });
});
