import { type Db, prepared } from "../db.ts";
import { openScratch } from "../openScratch.ts";
import { schemaOf } from "../schemaDamage.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";
import { entryCount } from "./slices.ts";

/** SQLite's own check of pages and indexes, the tables as the program makes them, and that nothing was left out of them. */
export function verifyStructure(db: Db, damage: DamageList): void {
  const say = (detail: string) => damage.add({ what: "structure", fault: "unreadable", detail });
  try {
    for (const line of db.pragma("integrity_check(100)") as { integrity_check: string }[]) {
      if (line.integrity_check !== "ok") say(line.integrity_check);
    }
    for (const line of schemaDifferences(db)) say(line);
    for (const line of countDifferences(db)) damage.add({ what: "record", fault: "lost", detail: line });
  } catch (cause) {
    say(wordsOf(cause));
  }
}

function schemaDifferences(db: Db): string[] {
  const scratch = openScratch();
  try {
    const there = new Map(schemaOf(db).map((item) => [item.name, item.sql]));
    const wanted = schemaOf(scratch);
    const changed = wanted
      .filter(({ name, sql }) => there.get(name) !== sql)
      .map(({ name }) => `${name} is not as it was made`);
    const known = new Set(wanted.map(({ name }) => name));
    const strange = [...there.keys()]
      .filter((name) => !known.has(name))
      .map((name) => `${name} is not of this program's making`);
    return [...changed, ...strange];
  } finally {
    scratch.close();
  }
}

/** Every check in the ledger has its row, and no row is without an entry. */
function countDifferences(db: Db): string[] {
  const count = (sql: string) => prepared<number>(db, sql).pluck().get() ?? 0;
  const filed =
    entryCount(db) -
    count("SELECT count(*) FROM entry WHERE kind <> 'check'") +
    count("SELECT count(*) FROM entry WHERE kind = 'replacement' AND kind <> 'check'");
  const listed = count("SELECT count(*) FROM check_row");
  return filed === listed ? [] : [`${filed} checks are filed, ${listed} are listed`];
}
