import { expectationOf } from "../../app/round/match/expectationOf.ts";
import type { Expectation } from "../../app/round/match/MatchStop.ts";
import type { Db } from "../store/db.ts";
import { historyRows } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";

/** What a spindle's next check is expected to show: from its checks since the last work that began a new baseline. */
export function expected(db: Db, { spindle }: SpindleStanding): Expectation | undefined {
  const event = serviceEvents(db, spindle.spindleId).findLast((e) => e.newBaseline);
  const fromMs = event === undefined ? Number.NEGATIVE_INFINITY : Date.parse(event.at);
  const rows = historyRows(db, spindle.spindleId).filter((row) => row.measuredAtMs >= fromMs);
  return expectationOf(
    rows.map((row) => row.valueN),
    spindle.limits.nominalN,
  );
}
