import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";

/** Somebody beside the series who listens to the connected gauge: a proof read live. */
export type BenchEar = {
  /** While true the gauge's clampings belong to no series. */
  readonly isLive: boolean;
  /** Lent until the call returns. */
  heard(batch: ReadingBatch): void;
  gaugeCut(why: "opened" | "lost"): void;
};
