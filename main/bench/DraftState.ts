import type { Tag } from "../../app/contract/seriesViews.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import type { CheckReason } from "../../app/ledger/check.ts";

/** A cycle of the series in work. `sessionId` and the cycle's place name it for ever: a replay gives the same. */
export type DraftCycle = {
  readonly cycleId: string;
  readonly sessionId: string;
  readonly cycle: Cycle;
  readonly dropped: { readonly reason: string } | undefined;
};

/** A stretch of a session's stream that belongs to this series. */
export type DraftSession = {
  readonly sessionId: string;
  /** Place in the stream where the series began: cycles before it belong to an earlier one. */
  readonly fromIndex: number;
  readonly gapsS: readonly number[];
};

/** The series in work, as it is kept in the store: everything that is no consequence of something else. */
export type DraftState = {
  /** Becomes the check's id: accepting twice finds the check already filed. */
  readonly seriesId: string;
  readonly tag: Tag;
  readonly reason: CheckReason;
  readonly spindleWarm: boolean | undefined;
  readonly temperatureC: number | undefined;
  readonly counter: number | undefined;
  readonly note: string;
  readonly workOrder: string | undefined;
  /** The round in hand. */
  readonly roundId: string | undefined;
  /** The adapter the round's stop before was measured with. */
  readonly adapterBefore: string | undefined;
  readonly cycles: readonly DraftCycle[];
  readonly sessions: readonly DraftSession[];
  /** A value that no stream stands behind: typed in, or the mean of readings that came out of a gauge's memory. */
  readonly typed:
    | {
        readonly valueN: number;
        readonly text: string;
        readonly unit: string;
        /** How many stored readings it is the mean of, and whether each is a held maximum. */
        readonly docked?: { readonly takes: number; readonly held: boolean };
        /** The forces it is the mean of, where they are known one by one: their scatter counts. */
        readonly takesN?: readonly number[];
      }
    | undefined;
  /** Reasons the user gave for going on in spite of a warning, by its code. */
  readonly overrides: Readonly<Record<string, string>>;
  readonly recovered: boolean;
};

/** The stop a round in hand leads to; without a spindle when nothing of it is left. */
export type LedTo = Pick<Tag, "spindleId" | "adapterId"> & {
  readonly roundId: string | undefined;
  readonly adapterBefore: string | undefined;
  /** Gauge and operator it was planned for: taken where none is chosen. */
  readonly proposed?: Pick<Tag, "gaugeId" | "operatorId">;
};

/** A new series keeps who measures and with which gauge; spindle and adapter are asked for anew. */
export function freshDraft(seriesId: string, keep: Pick<Tag, "gaugeId" | "operatorId">): DraftState {
  return {
    seriesId,
    tag: { spindleId: undefined, adapterId: undefined, gaugeId: keep.gaugeId, operatorId: keep.operatorId },
    reason: "routine",
    spindleWarm: undefined,
    temperatureC: undefined,
    counter: undefined,
    note: "",
    workOrder: undefined,
    roundId: undefined,
    adapterBefore: undefined,
    cycles: [],
    sessions: [],
    typed: undefined,
    overrides: {},
    recovered: false,
  };
}
