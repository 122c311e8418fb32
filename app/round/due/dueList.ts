import type { DueFacts, DueItem } from "./DueFacts.ts";
import { dueOf } from "./dueOf.ts";
import type { WorksCalendar } from "./WorksCalendar.ts";

/** Gravity decides between spindles due on one day. */
const gravity = ["stopped", "afterCrash", "act", "remeasure"];

/**
 * All spindles by the day they are due, overdue first; on one day what presses more, then by id so that the order
 * never jumps.
 */
export function dueList(facts: readonly DueFacts[], calendar: WorksCalendar, today: string): DueItem[] {
  const weight = (item: DueItem) => {
    const at = gravity.indexOf(item.why);
    return at < 0 ? gravity.length : at;
  };
  return facts
    .map((one) => dueOf(one, calendar, today))
    .sort(
      (a, b) =>
        (a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : 0) ||
        weight(a) - weight(b) ||
        (a.spindleId < b.spindleId ? -1 : 1),
    );
}
