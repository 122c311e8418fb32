import type { Cycle, Waveform } from "../../app/cycle/Cycle.ts";
import type { SessionSettings } from "./SessionTypes.ts";
import type { SpoolRecord } from "./SpoolRecord.ts";
import { StreamFeed } from "./StreamFeed.ts";
import { shiftedCycle, shiftedWaveform } from "./shiftedCycle.ts";

export type ReplaySink = {
  cycle(cycle: Cycle, waveform: Waveform): void;
  gap?(atS: number | undefined): void;
};

/**
 * Reads a session's records as the session itself read its bytes, with the same calls in the same order: the cycles are
 * the same, to the bit. Parts of a session are fed one after the other. Where a quiet stretch was let go, places in time
 * go on as if it still stood there.
 */
export class SpoolReplay {
  settings: SessionSettings | undefined;
  /** Places before the next byte: readings and rejected lines, those let go counted. */
  places = 0;
  /** Wall time of the last byte, milliseconds; undefined before the first. */
  lastWallMs: number | undefined;
  trimmed = false;
  /** The last thing that was noted of a series, and how many cycles had closed by then. */
  lastMark: { readonly seriesId: string; readonly what: string; readonly cycles: number } | undefined;
  #feed: StreamFeed | undefined;
  #skippedPlaces = 0;
  #anchorMs = 0; // wall less record time
  #cycles = 0;
  #lastS: number | undefined;
  readonly #sink: ReplaySink;

  constructor(sink: ReplaySink) {
    this.#sink = sink;
  }

  get feed(): StreamFeed | undefined {
    return this.#feed;
  }

  take(record: SpoolRecord): void {
    if (record.kind === "header") this.#begin(record);
    else if (this.#feed !== undefined) this.#follow(record, this.#feed);
  }

  end(): void {
    this.#feed?.end();
  }

  #begin({ settings, wallMs, atMs }: SpoolRecord & { kind: "header" }): void {
    this.#anchorMs = wallMs - atMs;
    this.settings ??= settings;
    const { pattern, rateHz, capacityN } = settings;
    this.#feed ??= new StreamFeed(pattern === undefined ? undefined : { pattern, rateHz, capacityN }, {
      cycle: (cycle, waveform) => {
        this.#cycles += 1;
        const by = this.#skippedPlaces;
        this.#sink.cycle(shiftedCycle(cycle, by), shiftedWaveform(waveform, by));
      },
      readings: ({ n, timesS }) => {
        const s = timesS[n - 1]!;
        this.#lastS = Number.isNaN(s) ? undefined : s;
      },
    });
  }

  #follow(record: SpoolRecord, feed: StreamFeed): void {
    switch (record.kind) {
      case "bytes":
        feed.push(record.bytes);
        this.lastWallMs = this.#anchorMs + record.atMs;
        break;
      case "gap":
        feed.gap(record.why);
        if (record.why !== "opened" && record.why !== "resumed") this.#sink.gap?.(this.#lastS);
        break;
      case "pattern":
        feed.setPattern(record, record.fromByte);
        break;
      case "zero":
        feed.stream?.takeZero();
        break;
      case "wall":
        this.#anchorMs = record.wallMs - record.atMs;
        break;
      case "series":
        this.lastMark = { seriesId: record.seriesId, what: record.what, cycles: this.#cycles };
        break;
      case "skipped":
        feed.gap("skipped");
        this.trimmed = true;
        this.#skippedPlaces += record.places;
    }
    this.places = (feed.stream?.live.places ?? 0) + this.#skippedPlaces;
  }
}
