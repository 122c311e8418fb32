import type { Body } from "../../../app/ledger/kinds.ts";
import type { Works } from "../../../app/ledger/register.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import { type Db, prepared } from "../../store/db.ts";
import { readEntry } from "../../store/ledger/readEntry.ts";
import { readStatus } from "../../store/projections/SpindleStatus.ts";
import { registered } from "../../store/records/register.ts";
import { knownNames, type NameBook } from "./NameBook.ts";
import { sameCheck } from "./sameCheck.ts";

/** So many imports are looked back at. */
const BACK = 2_000;

/** What the records say that reading a file of checks needs. */
export type Register = {
  readonly works: Works;
  readonly names: NameBook["known"];
  /** How often each check stands in a spindle's history already, by `sameCheck`; imported ones alone. */
  readonly there: (spindleId: string) => ReadonlyMap<string, number>;
  /** When the check was measured that a spindle is compared with today; undefined: there is none, or somebody chose it. */
  readonly baselineAtMs: (spindleId: string) => number | undefined;
  readonly limits: ReadonlyMap<string, Limits>;
  /** Imports of old checks, newest first. */
  readonly imports: readonly EarlierImport[];
  readonly nowMs: number;
};

export type EarlierImport = Pick<Body<"import">, "fileHash" | "reading"> & { readonly at: string };

export function registerOf(db: Db, works: Works, nowMs: number): Register {
  return {
    works,
    nowMs,
    names: knownNames(db),
    there: (spindleId) => thereIn(db, spindleId),
    baselineAtMs: (spindleId) => {
      const { baseline, choices } = readStatus(db, spindleId);
      return choices.length > 0 ? undefined : baseline?.[0];
    },
    limits: new Map(registered(db, "spindle").map((s) => [s.spindleId, s.limits])),
    imports: importsIn(db),
  };
}

function thereIn(db: Db, spindleId: string): Map<string, number> {
  const rows = prepared<{ at: number; valueN: number }>(
    db,
    `SELECT measured_at_ms AS at, value_n AS valueN FROM check_row
     WHERE spindle_id = ? AND source = 'imported' AND state <> 'replaced' AND value_n IS NOT NULL`,
  ).all(spindleId);
  const counts = new Map<string, number>();
  for (const { at, valueN } of rows) {
    const key = sameCheck(at, valueN);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

function importsIn(db: Db): EarlierImport[] {
  const places = prepared<number>(db, "SELECT n FROM entry WHERE kind = 'import' ORDER BY n DESC LIMIT ?")
    .pluck()
    .all(BACK);
  return places.flatMap((n) => {
    const entry = readEntry(db, n);
    const body = entry?.body as Body<"import">; // its kind says so
    return entry === undefined || body.what !== "checks"
      ? []
      : [{ fileHash: body.fileHash, reading: body.reading, at: entry.at }];
  });
}
