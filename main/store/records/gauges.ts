import type { Gauge } from "../../../app/ledger/register.ts";
import type { Db } from "../db.ts";
import { allStatus } from "../projections/SpindleStatus.ts";
import { registered, registeredOne } from "./register.ts";

/** All gauges, retired ones too. */
export const gaugeList = (db: Db): Gauge[] => registered(db, "gauge");
export const readGauge = (db: Db, gaugeId: string): Gauge | undefined => registeredOne(db, "gauge", gaugeId);

/** How many checks that count were made with each gauge and each adapter, by id. Looks at spindles, not at checks. */
export function checkCountsByTool(db: Db): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { uses } of allStatus(db).values()) {
    for (const [id, n] of Object.entries(uses)) counts.set(id, (counts.get(id) ?? 0) + n);
  }
  return counts;
}
