import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { hostname } from "node:os";
import { type Db, prepared } from "../db.ts";
import { putRow } from "../sealedRow.ts";
import { sha256 } from "./sha256.ts";

/** A chain's number in this file and its name everywhere. */
export type Origin = { readonly n: number; readonly origin: string };

/**
 * The chain this computer continues in this file; a new one when the file is new or comes from another computer,
 * so that two copies of a file that are both written on never share a chain.
 * @param fresh  begin a new one whatever is there: the file has just been restored
 */
export function ownOrigin(db: Db, machine: string, nowMs: number, fresh = false): Origin {
  const known = prepared<Origin>(db, "SELECT n, origin FROM origin WHERE machine = ? ORDER BY n DESC LIMIT 1").get(
    machine,
  );
  return known !== undefined && !fresh ? known : db.transaction(() => addOrigin(db, machine, nowMs)).immediate();
}

/** @param machine  null: merged from another file */
export function addOrigin(db: Db, machine: string | null, nowMs: number, origin: string = randomUUID()): Origin {
  const n = (prepared<number | null>(db, "SELECT max(n) FROM origin").pluck().get() ?? 0) + 1;
  putRow(db, "origin", { n, origin, machine, created_ms: Math.floor(nowMs) }, "new");
  return { n, origin };
}

/** A name for this computer that says nothing about it to a reader of the file. */
export function thisMachine(): string {
  return sha256(`${hostname()}\n${machineId()}`).slice(0, 32);
}

function machineId(): string {
  try {
    return readFileSync("/etc/machine-id", "utf8").trim();
  } catch {
    return ""; // not Linux: the host name has to do
  }
}
