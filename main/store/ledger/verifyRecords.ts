import { type Db, prepared } from "../db.ts";
import { rowSum, type SealedTable, sealedTables } from "../sealedRow.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";

/** Rows read at a time: fewer calls than one by one, and a look in between whether to go on. */
const CHUNK = 1024;

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
  const keys = table === "register" ? ["kind", "id"] : [sealedTables[table][0]];
  const key = keys.join(", ");
  const first = prepared<unknown[]>(db, `SELECT ${columns(table)} FROM ${table} ORDER BY ${key} LIMIT ${CHUNK}`).raw();
  const more = prepared<unknown[]>(
    db,
    `SELECT ${columns(table)} FROM ${table} WHERE (${key}) > (${keys.map(() => "?").join(", ")}) ORDER BY ${key} LIMIT ${CHUNK}`,
  ).raw();
  for (let rows = first.all(), read = 0; rows.length > 0; ) {
    goOn();
    for (const row of rows) verifyRow(table, keys.length, row, damage);
    read += rows.length;
    if (read > MOST) throw new RangeError("the table does not end"); // a damaged tree can lead back
    rows = rows.length < CHUNK ? [] : more.all(...rows.at(-1)!.slice(0, keys.length));
  }
}

const columns = (table: SealedTable) => `${sealedTables[table].join(", ")}, sum`;
const MOST = 1e9;

function verifyRow(table: SealedTable, keys: number, row: unknown[], damage: DamageList): void {
  const sum = row.pop();
  if (rowSum(row) !== sum) {
    damage.add({
      what: "record",
      fault: "altered",
      detail: `${table} ${row.slice(0, keys).join(" ")}: not what was written`,
    });
  }
  row.push(sum);
}
