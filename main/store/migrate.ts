import type { Db } from "./db.ts";
import { StoreError } from "./StoreError.ts";

export type Migration = { readonly version: number; readonly up: (db: Db) => void };

/** The schema version a file stands at; 0 in an empty one. */
export const schemaVersion = (db: Db): number => Number(db.pragma("user_version", { simple: true }));

/**
 * Brings a file up to the newest step. Each step and its number stand or fall together. A file that already holds
 * something is copied first, so that a step gone wrong costs nothing.
 * @param copyTo  where the copy goes, given the version it holds
 * @throws StoreError  `newer`: the file comes from a newer program; it is left untouched
 */
export function migrate(db: Db, steps: readonly Migration[], copyTo: (version: number) => string): void {
  const found = schemaVersion(db);
  const newest = steps.at(-1)?.version ?? 0;
  refuseNewer(found, newest);
  if (found > 0 && found < newest) prepareCopy(db, copyTo(found));
  for (const step of steps) {
    if (step.version <= found) continue;
    db.transaction(() => {
      step.up(db);
      db.pragma(`user_version = ${step.version}`); // rolls back with the step
    }).immediate();
  }
}

export function refuseNewer(found: number, newest: number): void {
  if (found <= newest) return;
  throw new StoreError(
    "newer",
    `This data file was written by a newer Holdfast (its records are of form ${found}, this program knows forms up to ${newest}). ` +
      "It was left untouched. Install the newer program to open it.",
  );
}

/** One consistent snapshot of the whole file, as it stood before the step. */
function prepareCopy(db: Db, path: string): void {
  db.prepare("VACUUM INTO ?").run(path);
}
