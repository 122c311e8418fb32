import { setImmediate as nextTurn } from "node:timers/promises";
import type { SpindleRow } from "../../app/contract/recordViews.ts";
import { spindleSlices } from "../store/records/spindles.ts";
import type { Store } from "../store/Store.ts";
import { toSpindleRow } from "./rows.ts";

/** So often the list is begun again when something was filed meanwhile; then it is read in one go. */
const TRIES = 3;

/** The list of all spindles, of one moment; thousands of them do not hold up the gauge. */
export async function spindleRows(store: Pick<Store, "db" | "lastPlace">): Promise<readonly SpindleRow[]> {
  for (let tries = 1; ; tries += 1) {
    const from = store.lastPlace();
    const rows: SpindleRow[] = [];
    for (const slice of spindleSlices(store.db)) {
      if (rows.length > 0 && tries <= TRIES) await nextTurn();
      for (const standing of slice) rows.push(toSpindleRow(standing));
    }
    // A page may have heard of a change already that an early slice knew nothing of.
    if (store.lastPlace() === from) return rows;
  }
}
