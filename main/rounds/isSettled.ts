import type { Works } from "../../app/ledger/register.ts";
import type { Round } from "../../app/ledger/round.ts";
import type { Db } from "../store/db.ts";
import { readSpindle } from "../store/records/spindles.ts";
import { worksDay } from "./worksDay.ts";

/** Whether nothing of a round is left to do: each stop measured on its day or later, left out with a reason, or retired. */
export function isSettled(db: Db, round: Round, works: Works, beingFiled: ReadonlySet<string>): boolean {
  return round.stops.every(({ spindleId, passed }) => {
    if (beingFiled.has(spindleId) || passed?.as === "leftOut") return true;
    const standing = readSpindle(db, spindleId);
    if (standing === undefined || standing.spindle.state !== "inUse") return true;
    return standing.last !== undefined && worksDay(standing.last.measuredAtMs, works.timeZone) >= round.on;
  });
}
