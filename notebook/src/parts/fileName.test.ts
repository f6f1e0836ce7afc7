import { describe, expect, it } from 'vitest';
import { fileName } from './fileName.js';

describe('fileName', () => {
  it('is put together from the wide to the narrow', () => {
    expect(fileName(['Tram depot, hall', 'signal', '', 'B1'], 'svg')).toBe('Tram depot hall - signal - B1.svg');
    expect(fileName(['Größe 2', 'марж'], 'png')).toBe('Größe 2 - марж.png');
  });
  it('keeps nothing that a file system or a page could act on, and is never empty or endless', () => {
    expect(fileName(['../../<img src=x>\u0000|a:b'], 'csv')).toBe('img srcxab.csv');
    expect(fileName(['<>'], 'html')).toBe('worksheet.html');
    expect(fileName(['x'.repeat(5000)], 'json')).toHaveLength(105);
  });
});
