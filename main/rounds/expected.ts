import { expectationOf } from "../../app/round/match/expectationOf.ts";
import type { Expectation } from "../../app/round/match/MatchStop.ts";
import { serviceCuts } from "../../app/trend/serviceCuts.ts";
import { markOf } from "../fleet/historyOf.ts";
import type { Db } from "../store/db.ts";
import { historyPoints } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { readWorks } from "../store/records/works.ts";

/** What a spindle's next check is expected to show: from its checks since the last work that began a new baseline. */
export function expected(db: Db, { spindle }: SpindleStanding): Expectation | undefined {
  const event = serviceEvents(db, spindle.spindleId).findLast((e) => e.newBaseline);
  const points = historyPoints(db, spindle.spindleId);
  const cut = event && serviceCuts(points, [markOf(event, readWorks(db)?.timeZone)])[0];
  return expectationOf(
    points.slice(cut?.firstAfter ?? 0).map((point) => point.valueN),
    spindle.limits.nominalN,
  );
}
