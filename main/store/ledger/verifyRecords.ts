import type { Db } from "../db.ts";
import { rowSum, type SealedTable, sealedTables } from "../sealedRow.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";

const CHUNK = 4096;

/** Every row outside the chain against its own checksum. @param goOn  called now and then; may throw to end it */
export function verifyRecords(db: Db, damage: DamageList, goOn: () => void): void {
  for (const table of Object.keys(sealedTables) as SealedTable[]) {
    try {
      verifyTable(db, table, damage, goOn);
    } catch (cause) {
      goOn(); // was it told to end? then out of here
      damage.add({ what: "record", fault: "unreadable", detail: `table ${table}: ${wordsOf(cause)}` });
    }
  }
}

function verifyTable(db: Db, table: SealedTable, damage: DamageList, goOn: () => void): void {
  const rows = db.prepare<[], unknown[]>(`SELECT ${sealedTables[table].join(", ")}, sum FROM ${table}`).raw();
  let seen = 0;
  for (const row of rows.iterate()) {
    if (seen % CHUNK === 0) goOn();
    seen += 1;
    const sum = row.pop();
    if (rowSum(row) === sum) continue;
    const key = table === "register" ? `${row[0]} ${row[1]}` : String(row[0]);
    damage.add({ what: "record", fault: "altered", detail: `${table} ${key}: not what was written` });
  }
}
