import type { ProofTableRow } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { ProofTerms } from "../../app/proof/result/proveReadings.ts";
import { astmE74Table, readAstmE74Table } from "../../app/proof/tables/astmE74Table.ts";
import { iso376Table, readIso376Table } from "../../app/proof/tables/iso376Table.ts";
import type { Db } from "../store/db.ts";
import { registeredOne } from "../store/records/register.ts";
import type { EntryDraft } from "../store/Store.ts";

export type TableName = "iso376" | "astmE74";

const readers = { iso376: readIso376Table, astmE74: readAstmE74Table } as const;
const keyOf = (table: TableName) => `proof.table.${table}`;

/** The tables this laboratory has corrected by its own edition of a standard; what it has not is as shipped. */
export function proofTables(db: Db): ProofTerms["tables"] {
  const value = (table: TableName) => registeredOne(db, "setting", keyOf(table))?.value ?? undefined;
  const [iso376, astmE74] = [value("iso376"), value("astmE74")];
  return {
    iso376: iso376 === undefined ? undefined : readIso376Table(iso376),
    astmE74: astmE74 === undefined ? undefined : readAstmE74Table(astmE74),
  };
}

/** What is in force for each method that has a table. */
export function tableRows(db: Db): readonly ProofTableRow[] {
  const own = proofTables(db);
  return [
    { table: "iso376", value: own?.iso376 ?? iso376Table, own: own?.iso376 !== undefined },
    { table: "astmE74", value: own?.astmE74 ?? astmE74Table, own: own?.astmE74 !== undefined },
  ];
}

/** The setting that puts a corrected table into use, or with null the shipped one again. @throws AppError  it is no such table */
export function tableSetting(table: TableName, value: unknown): EntryDraft {
  try {
    if (value !== null) readers[table](value);
  } catch (cause) {
    if (!(cause instanceof RangeError)) throw cause;
    throw new AppError("invalid", `${cause.message}.`, { key: "proof.table", field: "value" });
  }
  return { kind: "setting", body: { key: keyOf(table), value: value as null } }; // JSON, as the contract has seen
}
