import { describe, expect, it } from 'vitest';
import { curveFire, smoulderingFire, squaredFire, steadyFire } from './designFire.js';
import { fuelNamed, ownFuel } from './fuel.js';

const wood = fuelNamed('wood');

describe('design fires', () => {
  it('NFPA 204: a fast fire reaches 1055 kW in 150 s, by the other definition 1000 kW', () => {
    expect(squaredFire({ growth: 'fast' }, wood).heat(150)).toBeCloseTo(1055, 9);
    expect(squaredFire({ growth: 'fast', definition: 1000 }, wood).heat(150)).toBeCloseTo(1000, 9);
  });

  it('say which definition they use', () => {
    expect(squaredFire({ growth: 'fast' }, wood).words).toBe('t-squared, fast: 1055 kW in 150 s, wood');
    expect(squaredFire({ growth: 'slow', definition: 1000 }, wood, 500).words).toBe(
      't-squared, slow: 1000 kW in 600 s up to 500 kW, wood',
    );
    expect(squaredFire({ coefficient: 0.02 }, wood).words).toBe('t-squared, 0.02 kW/s2, wood');
  });

  it('stay at their peak, and are nothing before ignition', () => {
    const fire = squaredFire({ growth: 'fast' }, wood, 500);
    expect(fire.heat(1000)).toBe(500);
    expect(fire.heat(-1)).toBe(0);
    expect(steadyFire(50, wood).heat(0)).toBe(50);
  });

  it('300 kW of foam make 2.2 g/s of soot: 0.131 x 300/17.8', () => {
    expect(steadyFire(300, fuelNamed('polyurethaneFoam')).smoke(10)).toBeCloseTo((0.131 * 300) / 17.8 / 1000, 12);
  });

  it('smoulder: the smoke doubles in its doubling time, then stays', () => {
    const fire = smoulderingFire(
      { firstGramsPerSecond: 0.002, doublingSeconds: 198, mostGramsPerSecond: 0.5 },
      fuelNamed('smouldering'),
    );
    expect(fire.smoke(0)).toBeCloseTo(2e-6, 15);
    expect(fire.smoke(198)).toBeCloseTo(4e-6, 15);
    expect(fire.smoke(1e6)).toBeCloseTo(5e-4, 12);
    expect(fire.heat(0)).toBeCloseTo((0.002 / 0.1) * 9, 12);
  });

  it('a curve is straight between its points, and not known after them', () => {
    const fire = curveFire(
      [
        [10, 0],
        [20, 100],
        [40, 60],
      ],
      wood,
    );
    expect([0, 10, 15, 20, 30, 40].map((s) => fire.heat(s))).toEqual([0, 0, 50, 100, 80, 60]);
    expect(fire.heat(41)).toBeNaN();
    expect(fire.smoke(41)).toBeNaN();
    expect(fire.until).toBe(40);
  });

  it('say what must change', () => {
    const fuel = ownFuel({ sootYield: 0.1, heatOfCombustion: 10 });
    expect(() => curveFire([[0, 1]], wood, 'burn.csv')).toThrow('burn.csv: a heat release curve needs two points');
    expect(() =>
      curveFire(
        [
          [0, 1],
          [0, 2],
        ],
        wood,
        'burn.csv',
      ),
    ).toThrow('burn.csv: point 2 is at 0 s, which does not come after 0 s');
    expect(() =>
      curveFire(
        [
          [0, 1],
          [1, -2],
        ],
        wood,
      ),
    ).toThrow('point 2: heat release rate -2 kW');
    expect(() => steadyFire(0, wood)).toThrow('heat release rate 0 kW');
    expect(() => squaredFire({ coefficient: 0 }, wood)).toThrow('coefficient 0 kW/s2');
    expect(() => squaredFire({ growth: 'fast' }, wood, 0)).toThrow('peak 0 kW');
    expect(() => smoulderingFire({ firstGramsPerSecond: 2, doublingSeconds: 10, mostGramsPerSecond: 1 }, fuel)).toThrow(
      'greatest smoke 1 g/s must be finite and not less than the first, 2 g/s',
    );
  });
});
