import type { Trace } from "../phase/Trace.ts";

/**
 * What the parts of a cycle's analysis share. Indices are those of the trace.
 */
export type Ground = {
  readonly trace: Trace;
  /** Readings before this index were not copied. */
  readonly first: number;
  /** A copy of the trace's readings; what is no usable reading (rejected, overload, spike) is NaN in it. */
  readonly w: Float64Array;
  /** The same with overload as high as anything shown: where the force stood, not how high. May be `w` itself. */
  readonly shape: Float64Array;
  /** 1 where the gauge was overloaded. */
  readonly over: Uint8Array | undefined;
  /** The zero the force is counted from, as indicated. */
  readonly zeroN: number;
  /** Indication the rise starts from: the zero, or what an unreleased clamping left. */
  readonly baseN: number;
  /** Scatter of the readings at rest. */
  readonly sigmaN: number;
  /** Resolution; 0 when unknown. */
  readonly stepN: number;
  /** First reading outside the zero band, and one past the last reading looked at. */
  readonly onset: number;
  readonly end: number;
};

/** Readings that make up `seconds`, at least `least`; where the rate is unknown, `least`. */
export function readingsIn(trace: Trace, seconds: number, least: number): number {
  return trace.rateHz === undefined ? least : Math.max(least, Math.round(seconds * trace.rateHz));
}
