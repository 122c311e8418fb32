import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import type { Body, Kind } from "../../../app/ledger/kinds.ts";
import type { Db } from "../db.ts";
import { putRow } from "../sealedRow.ts";

/** For kinds whose later entry with the same id replaces the earlier one whole. */
export function registering<K extends Kind>(kind: K, idOf: (body: Body<K>) => string) {
  return (db: Db, body: Body<K>, n: number): void =>
    putRow(db, "register", { kind, id: idOf(body), n, body: canonicalJson(body) });
}
