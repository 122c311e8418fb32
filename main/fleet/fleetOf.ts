import type { FleetView } from "../../app/contract/recordViews.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import { commonModes } from "../../app/trend/commonMode.ts";
import { compareLike, type LikeEntry } from "../../app/trend/compareLike.ts";
import { courseOf } from "../../app/trend/courseOf.ts";
import type { CoursePoint, History } from "../../app/trend/History.ts";
import { likeEntryOf } from "../../app/trend/likeEntryOf.ts";
import { rankFleet } from "../../app/trend/rankFleet.ts";
import type { Db } from "../store/db.ts";
import { allHistoryPoints } from "../store/records/histories.ts";
import { allServiceEvents } from "../store/records/serviceEvents.ts";
import { type SpindleStanding, spindleList } from "../store/records/spindles.ts";
import { readWorks } from "../store/records/works.ts";
import { fleetEntryOf } from "./fleetEntryOf.ts";
import { historyOf } from "./historyOf.ts";

/** Ranking of all spindles and what moved together, from the data file; `goOn` is called between spindles and may throw. */
export function fleetOf(db: Db, goOn: () => void = () => undefined): Omit<FleetView, "due"> {
  const { standings, histories } = readAll(db);
  const moves = commonModes(histories);
  const alike: LikeEntry[] = [];
  const rows = rankFleet(
    standings.map((standing, i) => {
      goOn();
      const trend = courseOf(histories[i]!);
      const { spindleId, taper, limits } = standing.spindle;
      const entry = likeEntryOf({ spindleId, taper, nominalN: limits.nominalN }, trend);
      if (entry !== undefined) alike.push(entry);
      return fleetEntryOf(standing, trend);
    }),
  );
  return { rows, commonMode: moves, like: compareLike(alike) };
}

/** As they stood at one moment, whatever is filed meanwhile. */
function readAll(db: Db): { standings: readonly SpindleStanding[]; histories: readonly History<CoursePoint>[] } {
  return db.transaction(() => {
    const standings = spindleList(db).filter((s) => s.spindle.state === "inUse");
    return { standings, histories: historiesOf(db, standings) };
  })();
}

function historiesOf(db: Db, standings: readonly SpindleStanding[]): History<CoursePoint>[] {
  const points = allHistoryPoints(db);
  const events = Map.groupBy(allServiceEvents(db), (event: ServiceEvent) => event.spindleId);
  const timeZone = readWorks(db)?.timeZone;
  return standings.map(({ spindle }) =>
    historyOf(
      spindle.spindleId,
      spindle.limits,
      points.get(spindle.spindleId) ?? [],
      events.get(spindle.spindleId) ?? [],
      timeZone,
    ),
  );
}
