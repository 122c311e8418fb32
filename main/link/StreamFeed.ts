import type { Cycle, Waveform } from "../../app/cycle/Cycle.ts";
import { GaugeStream, type GaugeStreamSink } from "../../app/cycle/GaugeStream.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";

export type FeedSink = Pick<GaugeStreamSink, "readings" | "notice"> & {
  cycle(cycle: Cycle, waveform: Waveform): void;
  unit?(unit: ForceUnit): void;
};

export type FeedPattern = {
  readonly pattern: LinePattern;
  readonly rateHz: number | undefined;
  readonly capacityN: number | undefined;
};

/** Bytes, or why some are missing here. */
type Waiting = Uint8Array | string;

/**
 * What a session reads of its bytes, and what a replay of its spool reads: both make the same calls here in the same
 * order, so they find the same cycles. Bytes that come before there is a pattern wait for it, in bounds.
 */
export class StreamFeed {
  #stream: GaugeStream | undefined;
  #sendsAlways = true;
  #ended = false;
  #unit: ForceUnit | undefined;
  #waiting: Waiting[] = [];
  #waitingBytes = 0;
  #bytes = 0; // all that came
  #fromByte = 0; // the first that still waits
  readonly #sink: FeedSink;

  constructor(pattern: FeedPattern | undefined, sink: FeedSink) {
    this.#sink = sink;
    if (pattern !== undefined) this.#stream = this.#read(pattern);
  }

  get stream(): GaugeStream | undefined {
    return this.#stream;
  }

  get unit(): ForceUnit | undefined {
    return this.#unit;
  }

  get bytes(): number {
    return this.#bytes;
  }

  /** The first byte a pattern set now would read. */
  get fromByte(): number {
    return this.#fromByte;
  }

  push(chunk: Uint8Array): void {
    this.#bytes += chunk.length;
    if (this.#stream !== undefined) this.#stream.push(chunk);
    else this.#wait(chunk.slice(), chunk.length);
  }

  /** Bytes were lost here; or, with "opened", the gauge may just be in the middle of a line. */
  gap(why: string): void {
    if (this.#stream === undefined) this.#wait(why, 0);
    // A gauge that sends when asked or told to is in no line when its port is opened.
    else if (why !== "opened" || this.#sendsAlways) this.#stream.gap();
  }

  /**
   * Sets the pattern, once, and reads what has waited for it.
   * @param fromByte  where the reading begins; a replay passes what the live session had
   */
  setPattern(pattern: FeedPattern, fromByte: number): void {
    if (this.#stream !== undefined) throw new Error("a stream is read with one pattern; open it again for another");
    const waiting = this.#waiting;
    let at = this.#fromByte;
    this.#waiting = [];
    this.#stream = this.#read(pattern);
    for (const item of waiting) {
      if (typeof item === "string") {
        this.gap(item);
        continue;
      }
      if (at + item.length > fromByte) this.#stream.push(item.subarray(Math.max(0, fromByte - at)));
      at += item.length;
    }
    if (this.#ended) this.#stream.end();
  }

  /** The stream is over: a cycle in work is handed out as cut. */
  end(): void {
    this.#ended = true;
    this.#stream?.end();
  }

  #read({ pattern, rateHz, capacityN }: FeedPattern): GaugeStream {
    this.#sendsAlways = pattern.sends === "always";
    return new GaugeStream(
      { pattern, rateHz: rateHz ?? requestRate(pattern), capacityN },
      {
        ...this.#sink,
        unit: (unit) => {
          this.#unit = unit;
          this.#sink.unit?.(unit);
        },
      },
    );
  }

  #wait(item: Waiting, length: number): void {
    this.#waiting.push(item);
    this.#waitingBytes += length;
    while (this.#waitingBytes > WAITING_LIMIT) {
      const oldest = this.#waiting.shift()!;
      if (typeof oldest === "string") continue;
      this.#waitingBytes -= oldest.length;
      this.#fromByte += oldest.length;
    }
  }
}

/** Some minutes of a fast gauge: as long as a user may take over a question. */
const WAITING_LIMIT = 4 << 20;

/** A gauge that is asked sends as often as it is asked. */
function requestRate({ sends, request }: LinePattern): number | undefined {
  return sends === "onRequest" && request !== undefined ? 1_000 / request.everyMs : undefined;
}
