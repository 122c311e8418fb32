import { crc32 } from "node:zlib";
import type { SpoolRecord } from "./SpoolRecord.ts";

/** First bytes of every spool file; text, so that whoever opens one sees what it is. */
export const SPOOL_MAGIC = Buffer.from("holdfast-spool 1\n", "latin1");
/** Length and CRC-32 of what follows, then the kind's letter. */
export const RECORD_HEAD = 9;
/** No record is longer; a greater length is damage. */
export const RECORD_LIMIT = 1 << 20;

const BYTES = 0x62; // "b"
const letters = {
  header: 0x68,
  gap: 0x67,
  pattern: 0x70,
  zero: 0x7a,
  wall: 0x77,
  series: 0x73,
  skipped: 0x6b,
} as const;
const kinds = new Map<number, keyof typeof letters>(
  // Object.entries forgets the key type; the literal above has only these.
  Object.entries(letters).map(([kind, letter]) => [letter, kind as keyof typeof letters]),
);

/** One record as it stands in the file. */
export function encodeRecord(record: SpoolRecord): Buffer {
  if (record.kind === "bytes") {
    const out = Buffer.allocUnsafe(RECORD_HEAD + 8 + record.bytes.length);
    out.writeDoubleLE(record.atMs, RECORD_HEAD);
    out.set(record.bytes, RECORD_HEAD + 8);
    return seal(out, BYTES);
  }
  const { kind, ...rest } = record;
  const json = Buffer.from(JSON.stringify(rest), "utf8");
  const out = Buffer.allocUnsafe(RECORD_HEAD + json.length);
  out.set(json, RECORD_HEAD);
  return seal(out, letters[kind]);
}

function seal(out: Buffer, letter: number): Buffer {
  out[8] = letter;
  out.writeUInt32LE(out.length - RECORD_HEAD, 0);
  out.writeUInt32LE(crc32(out.subarray(8)), 4);
  return out;
}

/**
 * The record in `whole`, head included; undefined when its check does not hold or its kind is unknown.
 * The bytes of a `bytes` record are a view on `whole`.
 */
export function decodeRecord(whole: Buffer): SpoolRecord | undefined {
  if (crc32(whole.subarray(8)) !== whole.readUInt32LE(4)) return undefined;
  const payload = whole.subarray(RECORD_HEAD);
  if (whole[8] === BYTES) {
    if (payload.length < 8) return undefined;
    return { kind: "bytes", atMs: payload.readDoubleLE(0), bytes: payload.subarray(8) };
  }
  const kind = kinds.get(whole[8]!);
  if (kind === undefined) return undefined;
  // Written by encodeRecord and vouched for by the CRC: the shape is the kind's.
  return { kind, ...JSON.parse(payload.toString("utf8")) } as SpoolRecord;
}
