import { mkdirSync } from "node:fs";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { Clock } from "./Clock.ts";
import type { SessionSettings } from "./SessionTypes.ts";
import { Spool } from "./Spool.ts";
import type { SpoolRecord } from "./SpoolRecord.ts";
import { spoolPath } from "./spoolFolder.ts";

export type SpoolWriterOptions = {
  readonly folder: string;
  readonly settings: SessionSettings;
  readonly clock: Clock;
  /** Told when the record on disk cannot be written; it is tried again every ten seconds, in a next part. */
  readonly onFailed: (cause: Error) => void;
  readonly onWritable?: (() => void) | undefined;
  /** A part goes on in the next file beyond this; default 64 MiB. */
  readonly partBytes?: number | undefined;
};

/**
 * A session's record on disk: parts of bounded length, each with a header that repeats what a reader needs, so
 * that an old part can be let go without the others. Times count from the session's start.
 */
export class SpoolWriter {
  readonly #options: SpoolWriterOptions;
  readonly #startMs: number;
  #settings: SessionSettings;
  #spool: Spool | undefined;
  #part = 0;
  #anchorOffMs = 0; // wall minus monotonic when last written
  #failedMs: number | undefined; // when it was last tried in vain

  constructor(options: SpoolWriterOptions) {
    this.#options = options;
    this.#settings = options.settings;
    this.#startMs = options.clock.monotonicMs();
    try {
      this.#nextPart();
    } catch (cause) {
      this.#fail(cause as Error); // node:fs throws nothing else
    }
  }

  /** The part being written; undefined when none can be. */
  get path(): string | undefined {
    return this.#failedMs === undefined ? this.#spool?.path : undefined;
  }

  /** Milliseconds since the session's start: the time of the next record. */
  nowMs(): number {
    return this.#options.clock.monotonicMs() - this.#startMs;
  }

  bytes(chunk: Uint8Array): void {
    this.#anchor();
    this.#append({ kind: "bytes", atMs: this.nowMs(), bytes: chunk });
  }

  gap(why: string, lastedMs: number | undefined): void {
    this.#append({ kind: "gap", atMs: this.nowMs(), why, lastedMs });
  }

  pattern(pattern: LinePattern, rateHz: number | undefined, capacityN: number | undefined, fromByte: number): void {
    this.#settings = { ...this.#settings, pattern, rateHz, capacityN };
    this.#append({ kind: "pattern", atMs: this.nowMs(), pattern, rateHz, capacityN, fromByte });
  }

  zero(): void {
    this.#append({ kind: "zero", atMs: this.nowMs() });
  }

  series(seriesId: string, what: "began" | "filed" | "cleared"): void {
    this.#append({ kind: "series", atMs: this.nowMs(), seriesId, what });
  }

  async close(): Promise<void> {
    await this.#spool?.close();
    this.#spool = undefined;
  }

  #append(record: SpoolRecord): void {
    try {
      if (this.#failedMs !== undefined) this.#tryAgain();
      if (this.#failedMs !== undefined || this.#spool === undefined) return;
      if (this.#spool.length > (this.#options.partBytes ?? 64 << 20)) this.#nextPart();
      this.#spool.append(record);
    } catch (cause) {
      this.#fail(cause as Error); // node:fs throws nothing else
    }
  }

  /** What came meanwhile is missing, and the record says so. */
  #tryAgain(): void {
    if (this.#options.clock.monotonicMs() - this.#failedMs! < RETRY_MS) return;
    this.#nextPart();
    this.#failedMs = undefined;
    this.#spool?.append({ kind: "gap", atMs: this.nowMs(), why: "notKept", lastedMs: undefined });
    if (this.#failedMs === undefined) this.#options.onWritable?.();
  }

  /** A wall clock that was set, or a machine that slept, is noted where it happened. */
  #anchor(): void {
    const wallMs = this.#options.clock.wallMs();
    const off = wallMs - this.#options.clock.monotonicMs();
    if (Math.abs(off - this.#anchorOffMs) < 1_000) return;
    this.#anchorOffMs = off;
    this.#append({ kind: "wall", atMs: this.nowMs(), wallMs });
  }

  /** @throws the system's error when the file cannot be made */
  #nextPart(): void {
    const { folder, clock } = this.#options;
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    void this.#spool?.close(); // only flushes what is already written
    this.#part += 1;
    this.#spool = new Spool(spoolPath(folder, this.#settings.sessionId, this.#part), clock, (cause) =>
      this.#fail(cause),
    );
    const wallMs = clock.wallMs();
    this.#anchorOffMs = wallMs - clock.monotonicMs();
    this.#spool.append({ kind: "header", settings: this.#settings, part: this.#part, atMs: this.nowMs(), wallMs });
  }

  #fail(cause: Error): void {
    const first = this.#failedMs === undefined;
    this.#failedMs = this.#options.clock.monotonicMs();
    if (first) this.#options.onFailed(cause);
  }
}

const RETRY_MS = 10_000;
