import { describe, expect, it } from 'vitest';
import { UsageError } from '../columns/index.js';
import { unitNamed, units } from './unit.js';

describe('unitNamed', () => {
  it('knows every unit by its own name', () => {
    for (const unit of units) expect(unitNamed(unit, 'from')).toBe(unit);
  });

  it.each(['', 'Percent', 'percent/m', 'constructor', '__proto__'])('refuses "%s" and lists the units', (name) => {
    expect(() => unitNamed(name, 'to')).toThrow(UsageError);
    expect(() => unitNamed(name, 'to')).toThrow(`to "${name}" is not a unit: use transmittance, percent,`);
  });
});
