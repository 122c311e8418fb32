import { crc32 } from "node:zlib";
import { Inflate } from "fflate";
import type { ZipEntry, ZipReader } from "./ZipReader.ts";

/** A line longer than the longest entry is none of ours. */
const MAX_LINE = 64 * 1024 * 1024;
/** Text of ours shrinks ten times at most, each entry carrying two hashes; what shrinks so much more was made to swell. */
const MAX_SWELLING = 200;
const FREE = 1 << 20;
const CHUNK = 1 << 16;

/**
 * The lines of an archive's member, inflated as they are asked for: neither the member nor the archive is ever whole
 * in memory. In step with a transaction, hence not asynchronous.
 * @throws StoreError  `damaged` cut short, altered, or made to swell
 */
export function* linesOf(zip: ZipReader, entry: ZipEntry): Generator<string> {
  let rest: Buffer = Buffer.alloc(0);
  for (const bytes of piecesOf(zip, entry)) {
    const all = rest.length === 0 ? bytes : Buffer.concat([rest, bytes]);
    let from = 0;
    for (let end = all.indexOf(LF, rest.length); end >= 0; end = all.indexOf(LF, from)) {
      yield all.toString("utf8", from, end);
      from = end + 1;
    }
    rest = Buffer.from(all.subarray(from));
    if (rest.length > MAX_LINE) throw zip.broken(`a line of ${entry.name} has no end`);
  }
  if (rest.length > 0) yield rest.toString("utf8");
}

const LF = 0x0a;

function* piecesOf(zip: ZipReader, entry: ZipEntry): Generator<Buffer> {
  const { name, method, packedSize, size, crc } = entry;
  if (method !== 8 && method !== 0) throw zip.broken(`${name} is packed in a way this program does not know`);
  if (size > FREE + packedSize * MAX_SWELLING) throw zip.broken(`${name} would swell to ${size} bytes`);
  const dataAt = zip.dataAt(entry);
  let made: Buffer[] = [];
  const inflate = new Inflate((bytes) => made.push(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length)));
  let [sum, total] = [0, 0];
  for (let at = 0; at < packedSize; at += CHUNK) {
    const bytes = zip.read(dataAt + at, Math.min(CHUNK, packedSize - at));
    if (method === 0) made.push(bytes);
    else pushed(zip, name, () => inflate.push(bytes, at + CHUNK >= packedSize));
    for (const piece of made) {
      total += piece.length;
      sum = crc32(piece, sum);
      if (total > size) throw zip.broken(`${name} holds more than the archive says`);
      yield piece;
    }
    made = [];
  }
  if (total !== size || sum !== crc) throw zip.broken(`${name} was altered or cut short`);
}

function pushed(zip: ZipReader, name: string, push: () => void): void {
  try {
    push();
  } catch {
    throw zip.broken(`${name} cannot be unpacked`);
  }
}

/** A small member as one text. */
export function textOf(zip: ZipReader, entry: ZipEntry, maxBytes: number): string {
  if (entry.size > maxBytes) throw zip.broken(`${entry.name} is far too long`);
  return Buffer.concat([...piecesOf(zip, entry)]).toString("utf8");
}
