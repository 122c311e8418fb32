import { deflateRawSync, inflateRawSync } from "node:zlib";

/**
 * The canonical bytes as they lie in the file: raw deflate (RFC 1951), or as they are where that is not shorter. A
 * check is several kilobytes of JSON with the same names over and over; deflated it takes less than half. The hash is
 * over the canonical bytes, so packing changes nothing that counts.
 */
export function packEntry(bytes: Uint8Array): Uint8Array {
  if (bytes.length < WORTH_IT) return bytes;
  // A smaller window and state: what one entry needs, and much of the cost of a short deflate is setting it up.
  const packed = deflateRawSync(bytes, { level: 6, windowBits: 13, memLevel: 8 });
  return packed.length < bytes.length ? packed : bytes;
}

/**
 * @param length  of the canonical bytes
 * @throws  the bytes are no deflate stream, or another length comes out
 */
export function unpackEntry(packed: Buffer, length: number): Buffer {
  if (packed.length === length) return packed;
  // One output chunk of the right size, and a bound: a damaged stream must not fill the memory.
  const chunkSize = Math.max(64, Math.min(length, MAX_ENTRY));
  const bytes = inflateRawSync(packed, { chunkSize, maxOutputLength: MAX_ENTRY });
  if (bytes.length !== length) throw new RangeError(`an entry of ${length} bytes unpacked to ${bytes.length}`);
  return bytes;
}

const WORTH_IT = 512;

/** Attachments are the largest bodies; nothing comes near this. */
const MAX_ENTRY = 64 * 1024 * 1024;
