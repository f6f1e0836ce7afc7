import { describe, expect, it } from 'vitest';
import { UsageError } from '../../columns/index.js';
import { growthClasses, growthCoefficient, growthDefinitions, growthNamed, growthTime } from './growth.js';

describe('growth of a fire', () => {
  it('the two definitions differ by 5.5 % in the coefficient and 2.7 % in time', () => {
    const [btu, round] = growthDefinitions;
    expect(growthCoefficient(150, btu) / growthCoefficient(150, round)).toBeCloseTo(1.055, 10);
    expect(Math.sqrt(btu / round)).toBeCloseTo(1.027, 3);
  });

  it('a class grows four times as fast as the one before it', () => {
    const coefficients = growthClasses.map((growth) => growthCoefficient(growthTime(growth)));
    coefficients.slice(1).forEach((alpha, i) => {
      expect(alpha / (coefficients[i] as number)).toBeCloseTo(4, 10);
    });
  });

  it('says what must change', () => {
    expect(() => growthNamed('quick')).toThrow('growth "quick" is not known: use slow, medium, fast, ultra-fast');
    expect(() => growthCoefficient(0)).toThrow(UsageError);
    expect(() => growthCoefficient(150, -1)).toThrow('heat release rate -1 kW must be more than 0');
  });
});
