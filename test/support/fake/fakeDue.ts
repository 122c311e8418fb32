import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { DueItem } from "../../../app/round/due/DueFacts.ts";

const DAY_MS = 86_400_000;

/** When a spindle is due by an interval of 90 days alone. */
export function fakeDue({ spindle, last }: SpindleRow, today: string): DueItem {
  const dueOn = last === undefined ? today : new Date(last.measuredAtMs + 90 * DAY_MS).toISOString().slice(0, 10);
  return {
    spindleId: spindle.spindleId,
    dueOn,
    why: last === undefined ? "neverMeasured" : "interval",
    also: [],
    overdueDays: Math.round((Date.parse(today) - Date.parse(dueOn)) / DAY_MS),
  };
}
