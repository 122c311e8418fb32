import type { ServiceEvent } from "../../../app/ledger/register.ts";
import { type Db, prepared } from "../db.ts";

/** A spindle's service events, oldest first; on one day in the order they were filed. */
export function serviceEvents(db: Db, spindleId: string): ServiceEvent[] {
  const bodies = prepared<string>(db, "SELECT body FROM service_event WHERE spindle_id = ? ORDER BY at, n")
    .pluck()
    .all(spindleId);
  return bodies.map((body) => JSON.parse(body) as ServiceEvent); // written from a body its schema had seen
}

/** Those of all spindles, spindle by spindle, each oldest first. */
export function allServiceEvents(db: Db): ServiceEvent[] {
  const bodies = prepared<string>(db, "SELECT body FROM service_event ORDER BY spindle_id, at, n").pluck().all();
  return bodies.map((body) => JSON.parse(body) as ServiceEvent); // written from a body its schema had seen
}
