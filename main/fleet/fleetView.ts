import type { FleetView } from "../../app/contract/recordViews.ts";
import { dueList } from "../../app/round/due/dueList.ts";
import { dueFacts } from "../rounds/dueFactsOf.ts";
import { worksCalendar } from "../rounds/worksCalendar.ts";
import { worksDay } from "../rounds/worksDay.ts";
import type { Db } from "../store/db.ts";
import { readWorks } from "../store/records/works.ts";
import { worksOutOfTheBox } from "../worksOutOfTheBox.ts";
import { fleetOf } from "./fleetOf.ts";

/** All spindles as pages get them: ranked, and each with the day by which to measure it. @param nowMs  which day of the works it is */
export function fleetView(db: Db, nowMs: number, goOn?: () => void): FleetView {
  const fleet = fleetOf(db, goOn);
  const works = readWorks(db) ?? worksOutOfTheBox(""); // what the core goes by until somebody says
  const due = dueList(dueFacts(db, works, fleet), worksCalendar(db), worksDay(nowMs, works.timeZone));
  return { ...fleet, due };
}
