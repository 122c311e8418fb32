import type { Verdict } from "../../verdict/Judgement.ts";

/** What is known of one spindle when its next check is planned. Dates are plain dates in the works' time zone. */
export type DueFacts = {
  readonly spindleId: string;
  readonly intervalDays: number;
  readonly intervalToolChanges: number | undefined;
  /** The last check that counts; undefined: never measured. */
  readonly last:
    | {
        readonly on: string;
        readonly verdict: Verdict;
        readonly counter: number | undefined;
        readonly remeasure: boolean;
      }
    | undefined;
  /** A `stop` that nobody has released. */
  readonly stopped: boolean;
  /** Tool changes a day, from counters of earlier checks; undefined: not known. */
  readonly changesPerDay: number | undefined;
  /** The counter as it stood when last noted, where that is newer than the last check. */
  readonly counterSince: { readonly on: string; readonly counter: number } | undefined;
  /** The earliest day on which a limit may be reached, from the forecast's interval; undefined: none is foreseen. */
  readonly limitFrom: string | undefined;
  /** Work on the spindle, or a crash, of which no check tells yet; the newest. */
  readonly event: { readonly on: string; readonly kind: "crash" | "service" } | undefined;
};

/** Why a spindle is due, the most pressing first. */
export type DueReason =
  | "stopped"
  | "afterCrash"
  | "act"
  | "remeasure"
  | "afterService"
  | "cannotTell"
  | "neverMeasured"
  | "watch"
  | "toolChanges"
  | "forecast"
  | "interval";

export type DueItem = {
  readonly spindleId: string;
  /** The day by which to measure: an open day of the works unless it is past. */
  readonly dueOn: string;
  readonly why: DueReason;
  /** Everything that made it due by then or sooner than its interval, the deciding one first. */
  readonly also: readonly DueReason[];
  /** Days past due; 0 or less: not overdue. */
  readonly overdueDays: number;
};
