import type { CycleFlag } from "../Cycle.ts";
import { stretchMedian } from "../read/stretch.ts";
import type { Pace } from "./Pace.ts";
import type { Trace } from "./Trace.ts";

/** What is known of the stretch outside the zero band while it lasts. */
export class Excursion {
  /** Index of its first reading. */
  onset = 0;
  /** Indication it starts from: the rest, or what an unreleased clamping left. */
  baseN = 0;
  /** At or under this the force is back at rest. */
  returnN = 0;
  /** Readings in a row back in the band, under the fall, and risen again. */
  inside = 0;
  below = 0;
  risen = 0;
  /** Greatest block level so far, as indicated; -Infinity before the first block. */
  topN = Number.NEGATIVE_INFINITY;
  /** Under this the force has fallen by a large part. */
  fallN = Number.NEGATIVE_INFINITY;
  /** Since the fall: the least of two successive readings, where, and the one before. */
  leastN = Number.POSITIVE_INFINITY;
  leastAt = 0;
  previousN = Number.POSITIVE_INFINITY;
  blockFrom = 0;
  /** The gauge said overload: there is force, however high. */
  overloaded = false;
  /** Of readings that were folded away. */
  foldedPeakN: number | undefined;
  foldedFlags = new Set<CycleFlag>();

  begin(onset: number, baseN: number, returnN: number): void {
    this.onset = onset;
    this.baseN = baseN;
    this.returnN = returnN;
    this.inside = 0;
    this.below = 0;
    this.overloaded = false;
    this.risen = 0;
    this.topN = Number.NEGATIVE_INFINITY;
    this.fallN = Number.NEGATIVE_INFINITY;
    this.blockFrom = onset;
    this.foldedPeakN = undefined;
    this.foldedFlags = new Set();
    this.beginFall();
  }

  beginFall(): void {
    this.inside = 0;
    this.risen = 0;
    this.leastN = Number.POSITIVE_INFINITY;
    this.previousN = Number.POSITIVE_INFINITY;
  }

  /** Level of the block that just ended; the greatest sets what counts as a fall by half. */
  endBlock(trace: Trace, zeroN: number, leastN: number): void {
    const level = stretchMedian(trace.values, this.blockFrom, trace.length);
    this.blockFrom = trace.length;
    if (!(level > this.topN)) return;
    this.topN = level;
    if (level - this.baseN <= leastN) return;
    // From a strained start half the force may lie under that start: then a fall by most of the rise counts.
    this.fallN = Math.max(zeroN + 0.5 * (level - zeroN), this.baseN + 0.3 * (level - this.baseN));
  }

  /** Follows a fall; single low readings are spikes. */
  noteLow(value: number, at: number): void {
    const low = Math.max(value, this.previousN);
    if (low < this.leastN) {
      this.leastN = low;
      this.leastAt = at;
    }
    this.previousN = value;
  }

  blockDone(trace: Trace, pace: Pace): boolean {
    return trace.length - this.blockFrom >= pace.block;
  }
}
