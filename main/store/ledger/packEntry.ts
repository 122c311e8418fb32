import { constants, deflateRawSync, inflateRawSync } from "node:zlib";
import { dictionary } from "./dictionary.ts";

/** How the canonical bytes lie in the file: codec 0 as they are, 1 raw deflate after `dictionary`. */
export type Packed = { readonly codec: number; readonly packed: Buffer };

/**
 * The canonical bytes as they lie in the file. A check is several kilobytes of JSON with the same names over and over;
 * deflated (RFC 1951) after a dictionary of them it takes a fifth. The hash is over the canonical bytes, so packing
 * changes nothing that counts.
 */
export function packEntry(bytes: Buffer): Packed {
  if (bytes.length < WORTH_IT) return { codec: 0, packed: bytes };
  const packed = deflateRawSync(bytes, PACKING);
  return packed.length < bytes.length ? { codec: 1, packed } : { codec: 0, packed: bytes };
}

/**
 * @param length  of the canonical bytes
 * @throws  the bytes are not so packed, or another length comes out
 */
export function unpackEntry({ codec, packed }: Packed, length: number): Buffer {
  if (codec !== 0 && codec !== 1) throw new RangeError(`an entry is packed in an unknown way (${codec})`);
  // One output chunk of the right size, and a bound: a damaged stream must not fill the memory.
  const chunkSize = Math.max(64, Math.min(length, MAX_ENTRY));
  const options = { dictionary, finishFlush: constants.Z_SYNC_FLUSH, chunkSize, maxOutputLength: MAX_ENTRY };
  const bytes = codec === 0 ? packed : inflateRawSync(packed, options);
  if (bytes.length !== length) throw new RangeError(`an entry of ${length} bytes unpacked to ${bytes.length}`);
  return bytes;
}

/**
 * Unpacks many entries of codec 1 in one go, which takes half the time: each is preceded by the dictionary itself, as a
 * stored block, and so finds behind it what it refers to.
 * @param lengths  of their canonical bytes
 * @returns  the canonical bytes; undefined when anything is wrong with any of them
 */
export function unpackMany(packed: readonly Buffer[], lengths: readonly number[]): Buffer[] | undefined {
  const total = lengths.reduce((sum, length) => sum + length + dictionary.length, 0);
  if (total > MAX_TOGETHER) return undefined;
  let all: Buffer;
  try {
    const stream = Buffer.concat([...packed.flatMap((entry) => [storedDictionary, entry]), LAST_BLOCK]);
    all = inflateRawSync(stream, { chunkSize: total + 64, maxOutputLength: total + 64 });
  } catch {
    return undefined;
  }
  if (all.length !== total) return undefined;
  let at = 0;
  return lengths.map((length) => {
    at += dictionary.length + length;
    return all.subarray(at - length, at);
  });
}

const WORTH_IT = 512;

/**
 * Flushed, not finished: packed entries can be strung together, which `unpackMany` lives on. Most of the time for one entry
 * goes into clearing the packer's tables: smaller ones take half the time and pack as well. Any zlib unpacks it.
 */
const PACKING = { level: 6, memLevel: 5, windowBits: 14, dictionary, finishFlush: constants.Z_SYNC_FLUSH };

/** Attachments are the largest bodies; nothing comes near this. */
const MAX_ENTRY = 64 * 1024 * 1024;
const MAX_TOGETHER = 16 * 1024 * 1024;

/** RFC 1951, 3.2.4: a block as it is, length and its complement before it; and an empty last one (3.2.6). */
const storedDictionary = Buffer.concat([Buffer.from([0, 0, 0, 0, 0]), dictionary]);
storedDictionary.writeUInt16LE(dictionary.length, 1);
storedDictionary.writeUInt16LE(0xffff - dictionary.length, 3);
const LAST_BLOCK = Buffer.from([3, 0]);
