/*
 * CRC-32 of gzip (RFC 1952, 8), eight bytes at a step: table k says what a byte comes to when k more bytes follow it.
 */

const steps = 8;
const polynomial = 0xedb88320;

const tables: readonly Uint32Array[] = (() => {
  const first = Uint32Array.from({ length: 256 }, (_, byte) => {
    let crc = byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ polynomial : crc >>> 1;
    return crc;
  });
  const all = [first];
  for (let k = 1; k < steps; k++) {
    const before = all[k - 1] as Uint32Array;
    all.push(before.map((crc) => (crc >>> 8) ^ (first[crc & 255] as number)));
  }
  return all;
})();

/**
 * Goes on with a checksum.
 *
 * @param crc of the bytes before; 0 where there are none
 * @returns an unsigned 32-bit number
 * @example crc32(new TextEncoder().encode('123456789')) // 0xcbf43926
 */
export function crc32(bytes: Uint8Array, crc = 0): number {
  const [t0, t1, t2, t3, t4, t5, t6, t7] = tables as readonly [
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
  ];
  let c = ~crc;
  let at = 0;
  for (; at + steps <= bytes.length; at += steps) {
    c ^=
      (bytes[at] as number) |
      ((bytes[at + 1] as number) << 8) |
      ((bytes[at + 2] as number) << 16) |
      ((bytes[at + 3] as number) << 24);
    c =
      (t7[c & 255] as number) ^
      (t6[(c >>> 8) & 255] as number) ^
      (t5[(c >>> 16) & 255] as number) ^
      (t4[c >>> 24] as number) ^
      (t3[bytes[at + 4] as number] as number) ^
      (t2[bytes[at + 5] as number] as number) ^
      (t1[bytes[at + 6] as number] as number) ^
      (t0[bytes[at + 7] as number] as number);
  }
  for (; at < bytes.length; at++) c = (c >>> 8) ^ (t0[(c ^ (bytes[at] as number)) & 255] as number);
  return ~c >>> 0;
}
