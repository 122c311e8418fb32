import { existsSync, renameSync } from "node:fs";
import { dirname } from "node:path";
import type { PersonExported } from "../../app/contract/reportViews.ts";
import { canonicalJson } from "../../app/ledger/canonicalJson.ts";
import type { Kind } from "../../app/ledger/kinds.ts";
import { syncFolder } from "../store/copies/copyDatabase.ts";
import { folderGone } from "../store/copies/inWordsOfCopying.ts";
import type { Db } from "../store/db.ts";
import { allEntries } from "../store/ledger/readEntry.ts";
import { entryCount } from "../store/ledger/slices.ts";
import type { Watch } from "../store/ledger/walkSlices.ts";
import { readOperator } from "../store/records/operators.ts";
import { StoreError } from "../store/StoreError.ts";
import { checkIn } from "./CsvFiles.ts";
import { inWordsOfExport } from "./inWordsOfExport.ts";
import { cycleLines, cycleTable, headerLine, kindLine, kindTables, type Table } from "./tables.ts";
import type { ZipMember } from "./ZipMember.ts";
import { ZipWriter } from "./ZipWriter.ts";

export type ExportPersonOptions = {
  readonly operatorId: string;
  readonly file: string;
  readonly nowMs: number;
  readonly watch: Watch;
};

const STEP = 64;

/**
 * Everything that was filed by or about one person, and what is kept of the person beside the ledger; the PIN is no
 * part of it. Each entry that names the person anywhere counts.
 * @throws StoreError  `notFound` no such person or folder, `conflict`, `full`, `readOnly`
 */
export async function exportPerson(db: Db, options: ExportPersonOptions): Promise<PersonExported> {
  const { file, nowMs, operatorId, watch } = options;
  const operator = readOperator(db, operatorId);
  if (operator === undefined) throw new StoreError("notFound", "This person is not in these records.");
  if (!existsSync(dirname(file))) throw new StoreError("notFound", folderGone(dirname(file)));
  if (existsSync(file))
    throw new StoreError(
      "conflict",
      `There is already a file ${file}. Try again in a second; nothing was written over.`,
    );
  const zip = new ZipWriter(`${file}.part`, nowMs);
  db.exec("BEGIN");
  try {
    const { name = null, initials = null } = operator.person ?? {};
    const person = { operatorId, name, initials, role: operator.role, state: operator.state };
    zip.member("README.txt").write(readme(new Date(nowMs).toISOString()));
    zip.member("person.json").write(`${JSON.stringify(person, null, 1)}\n`);
    const entries = await fill(db, zip, operatorId, watch);
    const bytes = await zip.finish(watch.goOn);
    renameSync(zip.path, file);
    syncFolder(dirname(file));
    return { file, bytes, entries };
  } catch (cause) {
    await zip.discard();
    throw inWordsOfExport(cause, dirname(file));
  } finally {
    db.exec("COMMIT");
  }
}

async function fill(db: Db, zip: ZipWriter, operatorId: string, watch: Watch): Promise<number> {
  const lines = zip.member("entries.jsonl");
  const tables = new Map<Table, ZipMember>();
  const into = (table: Table): ZipMember => {
    const known = tables.get(table) ?? zip.member(table.file);
    if (!tables.has(table)) known.write(headerLine(table));
    tables.set(table, known);
    return known;
  };
  const total = entryCount(db);
  let [seen, entries] = [0, 0];
  for (const filed of allEntries(db)) {
    seen += 1;
    if (seen % STEP === 0) {
      watch.goOn();
      watch.progress(seen, total);
      await lines.room();
    }
    const { hash: _hash, n: _place, ...entry } = filed;
    const text = canonicalJson(entry);
    if (!text.includes(operatorId)) continue;
    entries += 1;
    lines.write(`${text}\n`);
    into(kindTables.get(filed.kind as Kind)!).write(kindLine(filed.kind, filed, filed.body));
    const check = checkIn(filed);
    if (check !== undefined && check.cycles.length > 0) into(cycleTable).write(cycleLines(filed, check));
  }
  return entries;
}

const readme = (madeAt: string) => `Entries of one person
Made ${madeAt} by Holdfast.

person.json     Who it is, as kept beside the records. A PIN is kept as a hash only and is no part of this.
entries.jsonl   Every entry that names the person, one a line, in canonical JSON (RFC 8785).
csv/*.csv       The same as tables (RFC 4180, UTF-8).
`;
