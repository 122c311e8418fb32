import { type Trend, trendOf } from "../../app/trend/trendOf.ts";
import type { Db } from "../store/db.ts";
import { readCheck } from "../store/records/checks.ts";
import { historyRows } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { detailOf, historyOf } from "./historyOf.ts";

/** Of so many last checks the inside is looked at too, for scatter and creep: each is a body to unpack. */
const DETAILED = 120;

/** A spindle's whole course out of the data file. */
export function trendInFile(db: Db, { spindle }: SpindleStanding): Trend {
  const rows = historyRows(db, spindle.spindleId);
  const history = historyOf(spindle.spindleId, spindle.limits, rows, serviceEvents(db, spindle.spindleId));
  const points = history.points.map((point, i) => {
    const filed = i < rows.length - DETAILED ? undefined : readCheck(db, point.checkId);
    return filed === undefined ? point : { ...point, ...detailOf(filed.check) };
  });
  return trendOf({ ...history, points });
}
