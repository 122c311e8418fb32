import type { ForceUnit } from "../quantity/forceUnits.ts";
import { noCounts } from "./LineCounts.ts";
import type { LineReader } from "./LineReader.ts";
import type { WordMeaning } from "./linePattern.ts";
import type { ReadingSink, RejectReason } from "./ReadingSink.ts";
import type { WholeLineMeaning } from "./WholeLines.ts";

/** Counts what comes out of the lines and hands it to whoever takes it; units and notices only when they change. */
export class SinkWriter {
  readonly counts = noCounts();
  sink: ReadingSink = silence;
  resolutionN: number | undefined;
  #unit: ForceUnit | undefined;
  #notice: WordMeaning = "other";
  #scale = Number.NaN; // of the latest reading: its unit and decimals

  reading(reader: LineReader): void {
    this.counts.readings += 1;
    if (reader.scale !== this.#scale && reader.hasForce) this.#newScale(reader);
    if (reader.notice !== "other") this.notice(reader.notice);
    this.sink.reading(reader.forceN, reader.state, reader.stampS);
  }

  aside(means: WholeLineMeaning): void {
    if (means === "overload") {
      this.counts.readings += 1;
      this.sink.reading(0, "overload", Number.NaN);
      return;
    }
    this.counts.asides += 1;
    if (means === "lowBattery" || means === "underload") this.notice(means);
    this.sink.aside?.(means === "echo" ? "echo" : "status");
  }

  notice(means: WordMeaning): void {
    if (means === this.#notice) return;
    this.#notice = means;
    if (means === "lowBattery" || means === "moving" || means === "stable" || means === "underload")
      this.sink.notice?.(means);
  }

  rejected(reason: RejectReason): void {
    this.counts.rejected[reason] += 1;
    this.sink.rejected(reason);
  }

  /** Leaves the sink: it is nobody's between two chunks. */
  rest(): void {
    this.sink = silence;
  }

  #newScale(reader: LineReader): void {
    this.#scale = reader.scale;
    this.resolutionN = reader.resolutionN;
    if (reader.unit === this.#unit) return;
    this.#unit = reader.unit;
    this.sink.unit?.(reader.unit);
  }
}

const silence: ReadingSink = { reading() {}, rejected() {} };
