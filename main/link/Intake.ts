import type { ZeroOutcome } from "../../app/cycle/phase/steadyZero.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { ByteTail } from "./ByteTail.ts";
import type { Clock } from "./Clock.ts";
import { LineEnds } from "./LineEnds.ts";
import { RateMeter } from "./RateMeter.ts";
import type { LinkCounters, SessionSettings } from "./SessionTypes.ts";
import { SpoolWriter } from "./SpoolWriter.ts";
import { type FeedSink, StreamFeed } from "./StreamFeed.ts";

export type IntakeOptions = {
  readonly settings: SessionSettings;
  /** Undefined: no record is kept (a file is its own). */
  readonly spoolFolder: string | undefined;
  readonly clock: Clock;
  readonly onSpoolFailed: (cause: Error) => void;
  readonly onSpoolWritable: () => void;
  /** A fault of our own while reading; the bytes are in the spool by then. */
  readonly onFault: (cause: unknown) => void;
};

/** What happens to every byte: first to the spool, then to the readings. Whatever else goes wrong, the bytes are kept. */
export class Intake {
  readonly feed: StreamFeed;
  readonly #options: IntakeOptions;
  readonly #spool: SpoolWriter | undefined;
  readonly #tail = new ByteTail(1 << 16);
  readonly #lineEnds = new LineEnds();
  readonly #rate = new RateMeter();
  #gaps = 0;

  constructor(options: IntakeOptions, sink: FeedSink) {
    const { settings, spoolFolder, clock, onSpoolFailed: onFailed, onSpoolWritable: onWritable } = options;
    this.#options = options;
    if (spoolFolder !== undefined) {
      this.#spool = new SpoolWriter({ folder: spoolFolder, settings, clock, onFailed, onWritable });
    }
    const { pattern, rateHz, capacityN } = settings;
    this.feed = new StreamFeed(pattern === undefined ? undefined : { pattern, rateHz, capacityN }, sink);
  }

  get spoolFile(): string | undefined {
    return this.#spool?.path;
  }

  bytes(chunk: Uint8Array): void {
    this.#spool?.bytes(chunk);
    const nowMs = this.#options.clock.monotonicMs();
    this.#tail.push(chunk, nowMs);
    this.#guard(() => this.feed.push(chunk));
    this.#lineEnds.push(chunk);
    this.#rate.note(this.#lineEnds.count, nowMs);
  }

  gap(why: string, lastedMs: number | undefined): void {
    if (why !== "opened" && why !== "resumed") this.#gaps += 1;
    this.#spool?.gap(why, lastedMs);
    this.#guard(() => this.feed.gap(why));
  }

  setPattern(pattern: LinePattern, rateHz: number | undefined, capacityN: number | undefined): void {
    const { fromByte } = this.feed;
    this.#spool?.pattern(pattern, rateHz, capacityN, fromByte);
    this.feed.setPattern({ pattern, rateHz, capacityN }, fromByte);
  }

  /** Takes the last steady second as the zero; undefined before there is a pattern. */
  takeZero(): ZeroOutcome | undefined {
    this.#spool?.zero();
    return this.feed.stream?.takeZero();
  }

  mark(seriesId: string, what: "began" | "filed" | "cleared"): void {
    this.#spool?.series(seriesId, what);
  }

  tail(): { readonly bytes: Uint8Array; readonly durationS: number | undefined } {
    return { bytes: this.#tail.bytes(), durationS: this.#tail.durationS };
  }

  async end(): Promise<void> {
    this.#guard(() => this.feed.end());
    await this.#spool?.close();
  }

  get counters(): LinkCounters {
    const counts = this.feed.stream?.counts;
    const byReason = Object.fromEntries(Object.entries(counts?.rejected ?? {}).filter(([, n]) => n > 0));
    return {
      bytes: this.feed.bytes,
      lines: counts?.lines ?? 0,
      readings: counts?.readings ?? 0,
      rejected: Object.values(byReason).reduce((sum, n) => sum + n, 0),
      byReason,
      gaps: this.#gaps,
      lineRateHz: this.#rate.perSecond,
    };
  }

  #guard(read: () => void): void {
    try {
      read();
    } catch (cause) {
      this.#options.onFault(cause);
    }
  }
}
