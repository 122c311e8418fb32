import type { ListKind } from "../../app/contract/importViews.ts";
import type { Db } from "../store/db.ts";
import { registered } from "../store/records/register.ts";
import type { Known } from "./readList.ts";
import { plainLabel } from "./Twins.ts";

const kinds = { spindles: "spindle", adapters: "adapter", gauges: "gauge" } as const;

/** Names and serial numbers of the records in use. A spindle is a place: the unit in it may have stood elsewhere before. */
export function knownLabels(db: Db, what: ListKind): Known {
  const inUse = registered(db, kinds[what]).filter((one) => one.state === "inUse");
  const serials = inUse.flatMap((one) => ("serial" in one && one.serial !== undefined ? [one.serial] : []));
  return { names: new Set(inUse.map((one) => plainLabel(one.name))), serials: new Set(serials.map(plainLabel)) };
}
