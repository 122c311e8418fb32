import type { Adjustment, Reference, StoredPlan } from "../../../app/ledger/proof.ts";
import type { Db } from "../db.ts";
import { registered, registeredOne } from "./register.ts";

/** What gauges are proved against and by, retired ones too. */
export const referenceList = (db: Db): Reference[] => registered(db, "reference");
export const readReference = (db: Db, id: string): Reference | undefined => registeredOne(db, "reference", id);
export const planList = (db: Db): StoredPlan[] => registered(db, "plan");

/** What was done to one gauge, oldest first. */
export function adjustmentsOf(db: Db, gaugeId: string): Adjustment[] {
  return registered(db, "adjustment")
    .filter((a) => a.gaugeId === gaugeId)
    .sort((a, b) => (a.at < b.at ? -1 : 1));
}

export const readAdjustment = (db: Db, id: string): Adjustment | undefined => registeredOne(db, "adjustment", id);
