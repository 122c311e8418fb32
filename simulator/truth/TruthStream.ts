import type { CycleFlag } from "../../app/cycle/Cycle.ts";
import type { ReadingState } from "../../app/gauge/ReadingSink.ts";

/** What really happened in one clamping. Forces net, newtons; times in seconds from the first reading. */
export type TruthCycle = {
  readonly startS: number;
  readonly endS: number;
  /** Greatest force between or at the readings; undefined where no figure can be asked for. */
  readonly peakN: number | undefined;
  /** Median of the force without noise at the readings of the settled window; undefined: held or overloaded. */
  readonly settledN: number | undefined;
  /** True standard error of the median of the noisy readings in that window. */
  readonly settledErrorN: number;
  /** The zero at the settled window, as indicated. */
  readonly zeroN: number;
  /** Flags that belong to it, and those that may or may not be set; all others are wrong. */
  readonly flags: ReadonlySet<CycleFlag>;
  readonly free: ReadonlySet<CycleFlag>;
  /** Inside the domain where the detector is sure: eight readings and 0.5 s of hold, 5 % of capacity. */
  readonly sure: boolean;
};

/** A generated stream and its truth. */
export type TruthStream = {
  readonly condition: string;
  readonly seed: number;
  readonly rateHz: number;
  readonly capacityN: number;
  /** Whether the detector is told the capacity. */
  readonly tellCapacity: boolean;
  readonly stepN: number;
  readonly noiseN: number;
  /** Share of the noise that stays from one reading to the next. */
  readonly memory: number;
  readonly forcesN: Float64Array;
  /** Undefined: all live. `rejected` lines have no reading. */
  readonly states: readonly (ReadingState | "rejected")[] | undefined;
  readonly cycles: readonly TruthCycle[];
};
