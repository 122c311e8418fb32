import type { Budget } from "../correction/Budget.ts";
import type { CycleFlag } from "../cycle/Cycle.ts";
import type { CheckReason, Remark } from "../ledger/check.ts";
import type { Judgement } from "../verdict/Judgement.ts";
import type { Settling } from "../verdict/whatSettles.ts";

/** The one series in work, as every page sees it. */

export type Tag = {
  readonly spindleId: string | undefined;
  readonly adapterId: string | undefined;
  readonly gaugeId: string | undefined;
  readonly operatorId: string | undefined;
};

export type CycleView = {
  readonly cycleId: string;
  /** From 1, in the order they came. */
  readonly number: number;
  readonly startS: number | undefined;
  readonly endS: number | undefined;
  readonly peakN: number;
  readonly settledN: number | undefined;
  readonly settledUncertaintyN: number | undefined;
  /** The stretch the settled force came from, in stream seconds. */
  readonly windowS: readonly [number, number] | undefined;
  readonly overshoot: number | undefined;
  readonly riseTimeS: number | undefined;
  readonly noiseN: number | undefined;
  readonly creep: number | undefined;
  readonly slopeNPerS: number | undefined;
  readonly zeroBeforeN: number | undefined;
  readonly zeroAfterN: number | undefined;
  readonly flags: readonly CycleFlag[];
  readonly dropped: { readonly reason: string } | undefined;
};

export type SeriesFigures = {
  readonly n: number;
  readonly basis: "settled" | "peak" | "typed";
  readonly meanN: number | undefined;
  readonly sN: number | undefined;
  readonly rangeN: number | undefined;
  /** Standard uncertainty of the mean. */
  readonly meanUncertaintyN: number | undefined;
  /** First clamping against the mean of the others, as a fraction. */
  readonly firstDifference: number | undefined;
  /** Numbers of the cycles named as outliers. */
  readonly outliers: readonly number[];
  /** What scatter of this size usually means (trade knowledge). */
  readonly scatter: "small" | "usual" | "large" | "unknown";
};

/** What the verdict would be if the series were filed now. */
export type Forming = {
  readonly valueN: number;
  readonly budget: Budget;
  readonly judgement: Judgement;
  readonly weakenedBy: readonly Remark[];
  /** What would settle an open verdict; undefined when it is not open at a limit. */
  readonly settling: Settling | undefined;
};

export type Warning = Remark & {
  /** `block`: cannot be measured like this. `ask`: a reason is wanted. `tell`: said, no more. */
  readonly weight: "block" | "ask" | "tell";
};

export type Draft = {
  readonly seriesId: string;
  readonly tag: Tag;
  readonly reason: CheckReason;
  readonly spindleWarm: boolean | undefined;
  readonly temperatureC: number | undefined;
  readonly counter: number | undefined;
  readonly note: string;
  readonly workOrder: string | undefined;
  /** The round in hand, which leads from spindle to spindle. */
  readonly roundId: string | undefined;
  /** The adapter its stop before was measured with; where this series takes another, it is changed first. */
  readonly adapterBefore: string | undefined;
  readonly cycles: readonly CycleView[];
  /** A value typed in instead of measured; in newtons, with the text as typed. */
  readonly typed: { readonly valueN: number; readonly text: string } | undefined;
  readonly figures: SeriesFigures;
  readonly forming: Forming | undefined;
  readonly warnings: readonly Warning[];
  /** Why it cannot be filed yet; undefined when it can. */
  readonly cannotFile:
    | "nothingMeasured"
    | "noSpindle"
    | "noGauge"
    | "blocked"
    | "reasonWanted"
    | "readOnly"
    | undefined;
  /** True when these cycles were found again after the program had stopped. */
  readonly recovered: boolean;
};

export type LiveView = {
  /** Net of zero; undefined when nothing is known now (no gauge, silent, overload). */
  readonly forceN: number | undefined;
  readonly word: "none" | "atRest" | "rising" | "holding" | "falling" | "overload" | "silent" | "held";
  /** Greatest net force since the last rest. */
  readonly greatestN: number | undefined;
  readonly zeroN: number | undefined;
  /** How long the present hold lasts. */
  readonly holdingS: number | undefined;
};

export type ZeroView = { readonly beforeN: number | undefined; readonly afterN: number };
