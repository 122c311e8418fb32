import { courseOf } from "../../app/trend/courseOf.ts";
import type { FleetPlace } from "../../app/trend/rankFleet.ts";
import { rankFleet } from "../../app/trend/rankFleet.ts";
import type { Db } from "../store/db.ts";
import { historyPoints } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { readWorks } from "../store/records/works.ts";
import { fleetEntryOf } from "./fleetEntryOf.ts";
import { historyOf } from "./historyOf.ts";

/** The forecast the ranking of all spindles gives this one, without working out the others. */
export function forecastInFile(db: Db, standing: SpindleStanding): FleetPlace["forecast"] {
  const { spindleId, limits } = standing.spindle;
  const events = serviceEvents(db, spindleId);
  const history = historyOf(spindleId, limits, historyPoints(db, spindleId), events, readWorks(db)?.timeZone);
  return rankFleet([fleetEntryOf(standing, courseOf(history))])[0]!.forecast; // one in, one out
}
