import { strToU8 } from 'fflate';
import { expect, it } from 'vitest';
import { crc32 } from './crc32.js';

it('check value of CRC-32/ISO-HDLC (catalogue of parametrised CRC algorithms)', () =>
  expect(crc32(strToU8('123456789'))).toBe(0xcbf43926));

it('goes on where it was left, wherever that is', () => {
  const bytes = Uint8Array.from({ length: 1000 }, (_, at) => (at * 7919) % 251);
  for (const cut of [0, 1, 7, 8, 9, 500, 999, 1000]) {
    expect(crc32(bytes.subarray(cut), crc32(bytes.subarray(0, cut)))).toBe(crc32(bytes));
  }
});
