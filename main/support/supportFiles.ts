import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import type { SupportMade } from "../../app/contract/supportViews.ts";
import type { Db } from "../store/db.ts";
import { schemaVersion } from "../store/migrate.ts";
import { operatorList } from "../store/records/operators.ts";
import { personalHere, redact } from "./redact.ts";

export type SupportOptions = {
  /** Where the log lies. */
  readonly folder: string;
  /** What the core knows of itself just now, ready to be read. */
  readonly about: string;
  readonly nowMs: number;
};

const LOGS = ["holdfast.log", "holdfast.log.1"];

/**
 * What helps others to help: the log, the program, its surroundings, counts of what is filed. No records, no names.
 * Each text is looked through once more as it is collected: a name may have come on the list since it was logged.
 */
export function supportFiles(db: Db, { folder, about, nowMs }: SupportOptions): SupportMade {
  const personal = personalHere(namesIn(db));
  const logs = LOGS.filter((name) => existsSync(join(folder, name))).map((name): [string, string] => [
    name,
    readFileSync(join(folder, name), "utf8"),
  ]);
  const all: [string, string][] = [["about.txt", `${about}\n${counts(db)}\n`], ...logs];
  const files = all.map(([name, text]) => {
    const clean = redact(text, personal);
    return { name, bytes: Buffer.byteLength(clean), text: clean };
  });
  const zipped = zipSync(Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)])));
  const stamp = new Date(nowMs).toISOString().slice(0, 19).replace(/[-:]/g, "");
  const zip = {
    fileName: `holdfast-support-${stamp}Z.zip`,
    mime: "application/zip",
    base64: Buffer.from(zipped).toString("base64"),
  };
  return { files, zip };
}

/** Names known to a data file, to be kept out of logs; none where they cannot be read. */
export function namesIn(db: Db): string[] {
  try {
    return operatorList(db).flatMap(({ person }) => person?.name ?? []);
  } catch {
    return [];
  }
}

function counts(db: Db): string {
  try {
    const kinds = db.prepare("SELECT kind, count(*) FROM entry GROUP BY kind ORDER BY kind").raw().all();
    const lines = (kinds as [string, number][]).map(([kind, count]) => `  ${kind}: ${count}`); // two columns
    return [`form of the data file: ${schemaVersion(db)}`, "entries:", ...lines].join("\n");
  } catch (cause) {
    return `the data file could not be counted: ${cause instanceof Error ? cause.message : String(cause)}`;
  }
}
