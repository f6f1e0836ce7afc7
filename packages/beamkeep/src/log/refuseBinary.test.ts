import { expect, it } from 'vitest';
import { refuseBinary } from './refuseBinary.js';

it('says what a file seems to be, and where', () => {
  expect(() => refuseBinary('a.gz', Uint8Array.of(0x1f, 0x8b, 8))).toThrow(
    'a.gz: this is gzipped twice: unzip it once',
  );
  expect(() => refuseBinary('a', Uint8Array.of(65, 10, 66, 10, 0))).toThrow(
    'a:3: not text but binary data (a zero byte)',
  );
  expect(() => refuseBinary('a', Uint8Array.of(65, 10))).not.toThrow();
});
