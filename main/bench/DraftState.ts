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
  readonly roundId: string | undefined;
  readonly cycles: readonly DraftCycle[];
  readonly sessions: readonly DraftSession[];
  readonly typed: { readonly valueN: number; readonly text: string; readonly unit: string } | undefined;
  /** Reasons the user gave for going on in spite of a warning, by its code. */
  readonly overrides: Readonly<Record<string, string>>;
  readonly recovered: boolean;
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
    cycles: [],
    sessions: [],
    typed: undefined,
    overrides: {},
    recovered: false,
  };
}
