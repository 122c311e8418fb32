import { createReadStream } from "node:fs";
import { SpoolParser } from "./SpoolParser.ts";
import type { SpoolRecord } from "./SpoolRecord.ts";
import { SPOOL_MAGIC } from "./spoolCodec.ts";

/** Whether a file's first bytes are those of a spool. */
export function isSpool(bytes: Uint8Array): boolean {
  return bytes.length >= SPOOL_MAGIC.length && SPOOL_MAGIC.equals(bytes.subarray(0, SPOOL_MAGIC.length));
}

/** What stood in a spool besides its records. */
export type SpoolEnd = {
  readonly wholeBytes: number;
  /** A record inside did not pass its check. */
  readonly damaged: boolean;
};

/**
 * Reads a whole spool from memory, record by record, in order. The bytes of a record are a view, not a copy.
 * @throws RangeError  it is no spool; ask `isSpool` first
 */
export function readSpool(bytes: Uint8Array, emit: (record: SpoolRecord) => void): SpoolEnd {
  const parser = new SpoolParser();
  parser.push(bytes, emit);
  return { wholeBytes: parser.wholeBytes, damaged: parser.damaged };
}

/**
 * The same for a file of any size, a block at a time, so that nothing else has to wait for long.
 * @param afterBlock  what is to be done before the next block is read
 */
export async function readSpoolFile(
  path: string,
  emit: (record: SpoolRecord) => void,
  afterBlock?: () => Promise<void>,
): Promise<SpoolEnd> {
  const parser = new SpoolParser();
  for await (const block of createReadStream(path, { highWaterMark: 1 << 16 })) {
    parser.push(block as Buffer, emit); // a stream without an encoding brings buffers
    await afterBlock?.();
  }
  return { wholeBytes: parser.wholeBytes, damaged: parser.damaged };
}
