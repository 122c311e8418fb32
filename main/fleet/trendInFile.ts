import type { CheckPoint } from "../../app/trend/History.ts";
import { type Trend, type TrendOptions, trendOf } from "../../app/trend/trendOf.ts";
import type { Db } from "../store/db.ts";
import { readCheck } from "../store/records/checks.ts";
import { historyPoints } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { readWorks } from "../store/records/works.ts";
import { detailOf, historyOf } from "./historyOf.ts";

/** Of so many last checks the inside is looked at too, for scatter and creep: each is a body to unpack. */
const DETAILED = 120;

export type TrendInFile = {
  readonly trend: Trend;
  /** The checks whose inside was looked at, oldest first: the last 120, by tool-change count all of them. */
  readonly detailed: readonly CheckPoint[];
};

/** A spindle's whole course out of the data file. */
export function trendInFile(db: Db, { spindle }: SpindleStanding, options: TrendOptions = {}): TrendInFile {
  const filedPoints = historyPoints(db, spindle.spindleId);
  const events = serviceEvents(db, spindle.spindleId);
  const history = historyOf(spindle.spindleId, spindle.limits, filedPoints, events, readWorks(db)?.timeZone);
  const from = options.xAxis === "counter" ? 0 : Math.max(0, filedPoints.length - DETAILED);
  const points = history.points.map((point, i) => {
    const filed = i < from ? undefined : readCheck(db, point.checkId);
    return filed === undefined ? point : { ...point, ...detailOf(filed.check) };
  });
  return { trend: trendOf({ ...history, points }, options), detailed: points.slice(from) };
}
