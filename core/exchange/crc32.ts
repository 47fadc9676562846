/** The reversed polynomial of CRC-32 as Ethernet, gzip and zip have it (ISO 3309). */
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/** The CRC-32 of bytes, from 0 to 2³² − 1. */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (rest >>> 8) ^ (TABLE[(rest ^ byte) & 0xff] ?? 0);
  return (rest ^ 0xffffffff) >>> 0;
}
