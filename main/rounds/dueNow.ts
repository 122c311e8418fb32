import type { FleetView } from "../../app/contract/recordViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { DueItem } from "../../app/round/due/DueFacts.ts";
import { dueOf } from "../../app/round/due/dueOf.ts";
import type { Db } from "../store/db.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { dueFactsOf } from "./dueFactsOf.ts";
import { worksCalendar } from "./worksCalendar.ts";
import { worksDay } from "./worksDay.ts";

type Forecast = Pick<FleetView["rows"][number]["forecast"], "state" | "lowMs" | "atMs">;

/** When one spindle is to be measured next: the day the due list gives it. @returns undefined for one not in use */
export function dueNow(
  db: Db,
  works: Works,
  standing: SpindleStanding,
  forecast: Forecast | undefined,
  nowMs: number,
): DueItem | undefined {
  if (standing.spindle.state !== "inUse") return undefined;
  return dueOf(dueFactsOf(db, works, standing, forecast), worksCalendar(db), worksDay(nowMs, works.timeZone));
}
