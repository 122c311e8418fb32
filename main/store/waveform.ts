import { deflateRaw, deflateRawSync, inflateRawSync } from "node:zlib";
import { sha256 } from "./ledger/sha256.ts";
import type { WaveformRow } from "./Store.ts";
import { ByteReader } from "./waveform/ByteReader.ts";
import { ByteWriter } from "./waveform/ByteWriter.ts";
import { packNumbers, unpackNumbers } from "./waveform/numberColumn.ts";

/** A cycle's readings with some rest on both sides. */
export type Waveform = {
  /** Place of the first reading in its stream. */
  readonly fromIndex: number;
  /** Newtons, one a place in time; NaN where a line was rejected or said overload. */
  readonly forceN: Float64Array | Float32Array;
  /**
   * Seconds from the stream's first line: evenly spaced, or one a place (NaN where a line carried none);
   * undefined when no time is known.
   */
  readonly time: { readonly startS: number; readonly stepS: number } | Float64Array | undefined;
};

/**
 * Packs a waveform for the store and hashes it; the numbers come back identical. The compressing runs beside the
 * core, so that a long cycle at a fast rate holds nothing up.
 */
export async function encodeWaveform(cycleId: string, waveform: Waveform): Promise<WaveformRow> {
  const payload = payloadOf(waveform);
  const packed = await new Promise<Buffer>((done, fail) =>
    deflateRaw(payload, (cause, bytes) => (cause === null ? done(bytes) : fail(cause))),
  );
  return rowOf(cycleId, waveform.forceN.length, packed);
}

/** The same at once, for programs that have nothing else to do meanwhile. */
export function encodeWaveformNow(cycleId: string, waveform: Waveform): WaveformRow {
  return rowOf(cycleId, waveform.forceN.length, deflateRawSync(payloadOf(waveform)));
}

/**
 * @param bytes  as `encodeWaveform` made them
 * @throws  they are not, or not all there
 */
export function decodeWaveform(bytes: Uint8Array): Waveform & { readonly forceN: Float64Array } {
  const count = sampleCountOf(bytes);
  if (count === undefined) throw new RangeError("not a waveform");
  const from = new ByteReader(
    inflateRawSync(bytes.subarray(HEADER), { maxOutputLength: 1024 + count * 24, chunkSize: chunkFor(count) }),
  );
  const fromIndex = from.float64();
  const time = timeFrom(from, count);
  return { fromIndex, time, forceN: unpackNumbers(from, count) };
}

/** How many readings a packed waveform says it holds; undefined when the bytes are no waveform. */
export function sampleCountOf(bytes: Uint8Array): number | undefined {
  if (bytes.length < HEADER || MAGIC.some((byte, i) => bytes[i] !== byte)) return undefined;
  const count = new DataView(bytes.buffer, bytes.byteOffset).getUint32(MAGIC.length, true);
  return count <= MAX_SAMPLES ? count : undefined;
}

const MAGIC = [0x48, 0x46, 0x57, 0x31]; // "HFW1"
const HEADER = MAGIC.length + 4;
const MAX_SAMPLES = 1 << 24; // far above the detector's own limit; a damaged count must not fill the memory

/** Readings of a few digits take two bytes each; a chunk far larger than what comes costs more than the unpacking. */
const chunkFor = (count: number) => Math.max(1_024, Math.min(64 + 3 * count, 1 << 20));

const UNTIMED = 0;
const EVEN = 1;
const STAMPED = 2;

function payloadOf({ fromIndex, forceN, time }: Waveform): Uint8Array {
  if (forceN.length > MAX_SAMPLES) throw new RangeError(`a waveform holds ${forceN.length} readings, too many`);
  const to = new ByteWriter();
  to.float64(fromIndex);
  if (time === undefined) to.byte(UNTIMED);
  else if (time instanceof Float64Array) {
    if (time.length !== forceN.length) throw new RangeError("a waveform needs one time a reading");
    to.byte(STAMPED);
    packNumbers(time, to);
  } else {
    to.byte(EVEN);
    to.float64(time.startS);
    to.float64(time.stepS);
  }
  packNumbers(Float64Array.from(forceN), to);
  return to.done();
}

function timeFrom(from: ByteReader, count: number): Waveform["time"] {
  const how = from.byte();
  if (how === UNTIMED) return undefined;
  if (how === EVEN) return { startS: from.float64(), stepS: from.float64() };
  if (how === STAMPED) return unpackNumbers(from, count);
  throw new RangeError("a waveform's times are packed in an unknown way");
}

function rowOf(cycleId: string, sampleCount: number, packed: Buffer): WaveformRow {
  const bytes = Buffer.alloc(HEADER + packed.length);
  bytes.set(MAGIC);
  bytes.writeUInt32LE(sampleCount, MAGIC.length);
  bytes.set(packed, HEADER);
  return { cycleId, bytes, hash: sha256(bytes), sampleCount };
}
