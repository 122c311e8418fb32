import type { SpoolRecord } from "./SpoolRecord.ts";
import { decodeRecord, RECORD_HEAD, RECORD_LIMIT, SPOOL_MAGIC } from "./spoolCodec.ts";

/**
 * Turns a spool's bytes into its records, wherever the chunk borders fall. A tail that a kill or a power cut has
 * left unfinished is not a record and is left out. One record that does not pass its check is taken for a gap
 * (its bytes are lost, its neighbours are whole); two in a row end the reading.
 */
export class SpoolParser {
  /** Bytes up to the end of the last whole record: where a torn file is cut. */
  wholeBytes = 0;
  /** True once a record inside the file failed its check. */
  damaged = false;
  #rest: Buffer = Buffer.alloc(0);
  #at = 0; // file offset of #rest
  #lastMs = 0;
  #skipped = false; // the record before did not pass its check
  #state: "magic" | "records" | "stopped" = "magic";

  /**
   * Takes the next bytes of the file; calls `emit` for each record they complete. Bytes of a record are lent.
   * @throws RangeError  the file is no spool
   */
  push(chunk: Uint8Array, emit: (record: SpoolRecord) => void): void {
    if (this.#state === "stopped") return;
    const view = Buffer.from(chunk.buffer, chunk.byteOffset, chunk.length);
    const bytes = this.#rest.length === 0 ? view : Buffer.concat([this.#rest, view]);
    const from = this.#state === "magic" ? this.#begin(bytes) : 0;
    this.#keep(bytes, this.#records(bytes, from, emit));
  }

  /** Answers where the records begin. */
  #begin(bytes: Buffer): number {
    if (bytes.length < SPOOL_MAGIC.length) return 0;
    if (!SPOOL_MAGIC.equals(bytes.subarray(0, SPOOL_MAGIC.length))) throw new RangeError("not a spool of this program");
    this.#state = "records";
    this.wholeBytes = SPOOL_MAGIC.length;
    return SPOOL_MAGIC.length;
  }

  /** Answers how far it came. */
  #records(bytes: Buffer, start: number, emit: (record: SpoolRecord) => void): number {
    let from = start;
    while (this.#state === "records" && bytes.length - from >= RECORD_HEAD) {
      const length = bytes.readUInt32LE(from);
      if (length > RECORD_LIMIT) this.#stop();
      const to = from + RECORD_HEAD + length;
      if (length > RECORD_LIMIT || to > bytes.length) break;
      this.#take(bytes.subarray(from, to), this.#at + to, emit);
      from = to;
    }
    return from;
  }

  #take(whole: Buffer, endsAt: number, emit: (record: SpoolRecord) => void): void {
    const record = decodeRecord(whole);
    if (record === undefined) {
      if (this.#skipped) this.#stop();
      this.damaged = true;
      this.#skipped = true;
      return;
    }
    if (this.#skipped) emit({ kind: "gap", atMs: this.#lastMs, why: "damaged", lastedMs: undefined });
    this.#skipped = false;
    this.wholeBytes = endsAt;
    this.#lastMs = record.atMs;
    emit(record);
  }

  #keep(bytes: Buffer, from: number): void {
    this.#rest = Buffer.from(bytes.subarray(from)); // a copy: the caller's chunk is lent
    this.#at += from;
  }

  #stop(): void {
    this.damaged = true;
    this.#state = "stopped";
  }
}
