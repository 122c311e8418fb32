import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { DueItem } from "../../../app/round/due/DueFacts.ts";

/** When a spindle is due by its interval alone. */
export function fakeDue({ spindle, last, dueOn }: SpindleRow, today: string): DueItem {
  return {
    spindleId: spindle.spindleId,
    dueOn: dueOn ?? today,
    why: last === undefined ? "neverMeasured" : "interval",
    also: [],
    overdueDays: Math.round((Date.parse(today) - Date.parse(dueOn ?? today)) / 86_400_000),
  };
}
