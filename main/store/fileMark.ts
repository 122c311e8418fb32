import type { Db } from "./db.ts";
import { refuseNewer, schemaVersion } from "./migrate.ts";
import { steps } from "./migrations/steps.ts";
import { StoreError } from "./StoreError.ts";

/** SQLite's application id: says whose file it is and of which sort, in the first hundred bytes. */
const REAL = 0x486f6c64; // "Hold"
const DEMO = 0x486f6c78; // "Holx"

/** Writes into a new file what it is. An old one keeps its mark. */
export function markFile(db: Db, demo: boolean): void {
  if (mark(db) === 0 && schemaVersion(db) === 0) db.pragma(`application_id = ${demo ? DEMO : REAL}`);
}

/** Whether a file holds the demo's invented data. */
export const isDemoFile = (db: Db): boolean => mark(db) === DEMO;

/**
 * Refuses a file that is not a data file of this program, not of the sort wanted, or too new.
 * @throws StoreError  `damaged`, `demoMismatch`, `newer`
 */
export function refuseStrangers(db: Db, path: string, demo: boolean): void {
  const found = readMark(db, path);
  if (found !== REAL && found !== DEMO) throw new StoreError("damaged", notOurs(path));
  refuseNewer(schemaVersion(db), steps.at(-1)!.version);
  if ((found === DEMO) === demo) return;
  throw new StoreError(
    "demoMismatch",
    found === DEMO
      ? `${path} holds the invented data of the demo. It was not opened as records of a real works; nothing was changed.`
      : `${path} holds real records. The demo does not open it; nothing was changed.`,
  );
}

const mark = (db: Db): number => Number(db.pragma("application_id", { simple: true }));

function readMark(db: Db, path: string): number {
  try {
    return mark(db);
  } catch (cause) {
    throw new StoreError("damaged", notOurs(path), cause);
  }
}

const notOurs = (path: string) =>
  `${path} is not a Holdfast data file, or its beginning is damaged. It was left untouched. Restore a backup, or choose another file.`;
