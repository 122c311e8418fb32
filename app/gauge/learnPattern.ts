import type { ForceUnit } from "../quantity/forceUnits.ts";
import type { LinePattern } from "./linePattern.ts";
import type { ReadingState, RejectReason } from "./ReadingSink.ts";

/** What the caller knows beforehand. */
export type LearnHints = {
  /** The unit of bare numbers; for kg, lb and the like it is the user's word that they mean force. */
  readonly unit?: ForceUnit | undefined;
  readonly rateHz?: number | undefined;
  /** How long the sample took to arrive, seconds: the rate is asked for with a proposal. */
  readonly durationS?: number | undefined;
  /** Lines kept in `decoded`; default 50,000. */
  readonly keepLines?: number | undefined;
};

/** One thing the sample cannot tell. */
export type OpenQuestion = {
  readonly field: "unit" | "force" | "time" | "counter" | "status" | "checksum" | "rate";
  readonly question: string;
  /** What the pattern says meanwhile, or what the sample makes likely. */
  readonly proposal?: string | undefined;
};

/** One line of the sample as the pattern reads it. Control characters in `raw` stand as <STX>. */
export type DecodedLine = {
  readonly raw: string;
  /** The figure as written, undefined for what is no figure. */
  readonly value?: number | undefined;
  /** Undefined while the unit is not known. */
  readonly unit?: ForceUnit | undefined;
  readonly forceN?: number | undefined;
  readonly state?: ReadingState | undefined;
  readonly stampS?: number | undefined;
  /** Set for lines that are no readings. */
  readonly aside?: "echo" | "status" | undefined;
  readonly rejected?: RejectReason | undefined;
};

export type LearnResult =
  | {
      readonly kind: "learned";
      readonly pattern: LinePattern;
      /** 0 to 1: how much of the sample the pattern reads, and how much sample there was. */
      readonly confidence: number;
      readonly decoded: readonly DecodedLine[];
      readonly undecided: readonly OpenQuestion[];
      readonly readings: number;
      readonly rejected: number;
    }
  | { readonly kind: "torque"; readonly unit: string; readonly reason: string }
  | { readonly kind: "nothing"; readonly reason: string; readonly lineEnds: boolean };

/** Proposes a line pattern from a few seconds of stream or a pasted sample. */
export function learnPattern(_bytes: Uint8Array, _hints: LearnHints = {}): LearnResult {
  return { kind: "nothing", reason: "learning is not written yet", lineEnds: false };
}
