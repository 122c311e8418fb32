import Database from "better-sqlite3";
import type { Db } from "./db.ts";
import { inPlainWords } from "./faults.ts";
import { readWhole } from "./readWhole.ts";

/**
 * A read-only connection: for a job, a copy, a look. Beside a running writer it sees what has been committed.
 * @throws StoreError  in plain words what stands in the way
 */
export function openReader(path: string): Db {
  return inPlainWords(() => {
    try {
      return touched(new Database(path, { readonly: true, fileMustExist: true, timeout: 2_000 }));
    } catch (cause) {
      if (!/^SQLITE_(CANTOPEN|READONLY)/.test(String((cause as { code?: unknown }).code))) throw cause;
      return touched(new Database(readWhole(path), { readonly: true }));
    }
  });
}

function touched(db: Db): Db {
  try {
    db.pragma("cell_size_check = ON");
    db.pragma("trusted_schema = OFF");
    db.pragma("schema_version"); // the file is first read here
    return db;
  } catch (cause) {
    db.close();
    throw cause;
  }
}
