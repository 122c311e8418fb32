import type { FleetEntry, RankedCourse } from "../../app/trend/rankFleet.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";

/** A spindle as the ranking takes it. */
export function fleetEntryOf({ spindle, last, stop, dueOn }: SpindleStanding, trend: RankedCourse): FleetEntry {
  return {
    spindleId: spindle.spindleId,
    trend,
    minimumN: spindle.limits.minimumN,
    verdict: last?.verdict,
    stopped: stop !== undefined,
    nextRoundMs: dueOn === undefined ? undefined : Date.parse(dueOn),
  };
}
