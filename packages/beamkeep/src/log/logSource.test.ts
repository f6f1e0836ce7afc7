import { expect, it } from 'vitest';
import { logOfText } from './logSource.js';

it('a text as a source, that can be read again and again', async () => {
  const source = logOfText('time,b1\n', 'x.csv');
  for (let again = 0; again < 2; again++) {
    const chunks: number[] = [];
    for await (const chunk of source.bytes) chunks.push(...chunk);
    expect(String.fromCharCode(...chunks)).toBe('time,b1\n');
  }
  expect([source.name, source.restarts]).toEqual(['x.csv', true]);
});
