import { allEntries } from "../ledger/readEntry.ts";
import type { Store } from "../Store.ts";
import { applyEntry } from "./applyEntry.ts";
import { projections } from "./compareProjections.ts";

/** Makes the tables that screens read anew from the ledger, in one transaction: all of it or nothing. */
export function rebuildProjections(store: Store): void {
  store.write((db) => {
    for (const table of Object.keys(projections)) db.exec(`DELETE FROM ${table}`);
    for (const entry of allEntries(db)) applyEntry(db, entry, entry.n);
  });
}
