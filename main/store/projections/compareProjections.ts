import type { Db } from "../db.ts";
import type { DamageList } from "../ledger/DamageList.ts";
import { allEntries } from "../ledger/readEntry.ts";
import { entryCount } from "../ledger/slices.ts";
import type { Watch } from "../ledger/walkSlices.ts";
import { openScratch } from "../openScratch.ts";
import { type SealedTable, sealedTables } from "../sealedRow.ts";
import { applyEntry } from "./applyEntry.ts";

/** The tables made from the ledger, with the columns that name a row. */
export const projections = {
  register: ["kind", "id"],
  check_row: ["n"],
  check_terms: ["n"],
  service_event: ["event_id"],
  proof_row: ["proof_id"],
  spindle_status: ["spindle_id"],
} as const satisfies Partial<Record<SealedTable, readonly string[]>>;

type Projection = keyof typeof projections;
/** Makes every projection anew from the ledger, beside the file, and compares: the two must be the same to the last column. */
export function compareProjections(db: Db, damage: DamageList, watch: Watch): void {
  const scratch = openScratch();
  try {
    const total = entryCount(db);
    let done = 0;
    scratch.exec("BEGIN");
    for (const entry of allEntries(db)) {
      watch.goOn();
      applyEntry(scratch, entry, entry.n);
      done += 1;
      watch.progress(done, total);
    }
    scratch.exec("COMMIT");
    for (const table of Object.keys(projections) as Projection[]) compareTable(table, db, scratch, damage, watch.goOn);
  } finally {
    scratch.close();
  }
}

function compareTable(table: Projection, db: Db, scratch: Db, damage: DamageList, goOn: () => void): void {
  const keys: readonly string[] = projections[table];
  const sql = `SELECT ${sealedTables[table].join(", ")} FROM ${table} ORDER BY ${keys.join(", ")}`;
  const say = (fault: "lost" | "differs", row: unknown[], what: string) =>
    damage.add({ what: "record", fault, detail: `${table} ${row.slice(0, keys.length).join(" ")}: ${what}` });
  const made = scratch.prepare<[], unknown[]>(sql).raw().iterate();
  let wanted = made.next();
  for (const row of db.prepare<[], unknown[]>(sql).raw().iterate()) {
    goOn();
    while (!wanted.done && before(wanted.value, row, keys.length)) {
      say("lost", wanted.value, "the ledger has it, the table does not");
      wanted = made.next();
    }
    if (wanted.done || before(row, wanted.value, keys.length)) say("differs", row, "the ledger has no such record");
    else {
      if (JSON.stringify(row) !== JSON.stringify(wanted.value)) say("differs", row, "not what the ledger says");
      wanted = made.next();
    }
  }
  for (; !wanted.done; wanted = made.next()) say("lost", wanted.value, "the ledger has it, the table does not");
}

function before(a: readonly unknown[], b: readonly unknown[], keys: number): boolean {
  for (let i = 0; i < keys; i += 1) {
    if (a[i] === b[i]) continue;
    return typeof a[i] === "number" && typeof b[i] === "number"
      ? Number(a[i]) < Number(b[i])
      : String(a[i]) < String(b[i]);
  }
  return false;
}
