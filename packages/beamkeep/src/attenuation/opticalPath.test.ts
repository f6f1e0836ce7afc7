import { describe, expect, it } from 'vitest';
import { crossings, opticalPath } from './opticalPath.js';

describe('opticalPath', () => {
  it('is twice the separation of a reflective beam, once of an end-to-end one', () => {
    expect(opticalPath('reflective', 62)).toBe(124);
    expect(opticalPath('end-to-end', 62)).toBe(62);
    expect(crossings('reflective')).toBe(2);
    expect(crossings('end-to-end')).toBe(1);
  });

  it.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY])('refuses a separation of %s m', (separation) => {
    expect(() => opticalPath('reflective', separation)).toThrow(
      `separation ${separation} m must be more than 0 and finite`,
    );
  });
});
