import { closeSync, fsync, ftruncateSync, openSync, writeSync } from "node:fs";
import type { Clock } from "./Clock.ts";
import type { SpoolRecord } from "./SpoolRecord.ts";
import { encodeRecord, RECORD_LIMIT, SPOOL_MAGIC } from "./spoolCodec.ts";

/**
 * One file of a session's record on disk. Each record is handed to the system before the call returns, so a
 * killed process loses nothing; the disk is told once a second, so a power cut loses at most the last second.
 * A write that fails (disk full) is cut off again and told by `onFailed`; measuring goes on without a record.
 */
export class Spool {
  readonly path: string;
  /** Bytes in the file. */
  length = 0;
  #fd: number | undefined;
  #dirty = false;
  #syncing = false;
  #cancelSync: (() => void) | undefined;
  readonly #clock: Clock;
  readonly #onFailed: (cause: Error) => void;

  /** @throws the system's error when the file cannot be made; it must not exist */
  constructor(path: string, clock: Clock, onFailed: (cause: Error) => void) {
    this.path = path;
    this.#clock = clock;
    this.#onFailed = onFailed;
    this.#fd = openSync(path, "wx", 0o600);
    this.#write(SPOOL_MAGIC);
  }

  append(record: SpoolRecord): void {
    if (record.kind === "bytes" && record.bytes.length > PIECE) this.#inPieces(record.atMs, record.bytes);
    else this.#write(encodeRecord(record));
  }

  /** Ends the file with everything on disk. */
  async close(): Promise<void> {
    this.#cancelSync?.();
    this.#cancelSync = undefined;
    const fd = this.#fd;
    this.#fd = undefined;
    if (fd === undefined) return;
    await new Promise<void>((resolve) => fsync(fd, () => resolve())); // a disk that fails now was told of before
    closeSync(fd);
  }

  #inPieces(atMs: number, bytes: Uint8Array): void {
    for (let from = 0; from < bytes.length; from += PIECE) {
      this.append({ kind: "bytes", atMs, bytes: bytes.subarray(from, from + PIECE) });
    }
  }

  #write(bytes: Buffer): void {
    const fd = this.#fd;
    if (fd === undefined) return;
    try {
      let done = 0;
      while (done < bytes.length) done += writeSync(fd, bytes, done, bytes.length - done, this.length + done);
      this.length += bytes.length;
    } catch (cause) {
      this.#cutBack(fd);
      this.#onFailed(cause as Error); // node:fs throws nothing else
      return;
    }
    this.#dirty = true;
    this.#planSync();
  }

  /** Half a record would end the reading of everything after it. */
  #cutBack(fd: number): void {
    try {
      ftruncateSync(fd, this.length);
    } catch {
      this.#fd = undefined;
      closeSync(fd);
    }
  }

  #planSync(): void {
    if (this.#cancelSync !== undefined || this.#syncing) return;
    this.#cancelSync = this.#clock.after(SYNC_MS, () => {
      this.#cancelSync = undefined;
      const fd = this.#fd;
      if (fd === undefined || !this.#dirty) return;
      this.#dirty = false;
      this.#syncing = true;
      fsync(fd, () => {
        this.#syncing = false;
        if (this.#dirty) this.#planSync();
      });
    });
  }
}

const SYNC_MS = 1_000;
const PIECE = RECORD_LIMIT / 4;
