import { deflateRawSync, inflateRawSync } from "node:zlib";

/**
 * The canonical bytes as they lie in the file: raw deflate (RFC 1951). A check is several kilobytes of JSON with
 * the same names over and over; deflated it takes less than half. The hash is over the canonical bytes.
 */
export function packEntry(text: string): { readonly packed: Buffer; readonly length: number } {
  const bytes = Buffer.from(text, "utf8");
  // A smaller window and state: what one entry needs, and much of the cost of a short deflate is setting it up.
  return { packed: deflateRawSync(bytes, { level: 6, windowBits: 13, memLevel: 6 }), length: bytes.length };
}

/**
 * @param length  of the canonical bytes
 * @throws  the bytes are no deflate stream, or another length comes out
 */
export function unpackEntry(packed: Uint8Array, length: number): Buffer {
  // One output chunk of the right size, and a bound: a damaged stream must not fill the memory.
  const bytes = inflateRawSync(packed, {
    chunkSize: Math.max(64, Math.min(length, MAX_ENTRY)),
    maxOutputLength: MAX_ENTRY,
  });
  if (bytes.length !== length) throw new RangeError(`an entry of ${length} bytes unpacked to ${bytes.length}`);
  return bytes;
}

/** Attachments are the largest bodies; nothing comes near this. */
const MAX_ENTRY = 64 * 1024 * 1024;
