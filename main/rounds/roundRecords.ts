import type { Docking, Round, StoredDumpFormat } from "../../app/ledger/round.ts";
import type { Db } from "../store/db.ts";
import { entriesOfKind } from "../store/ledger/readEntry.ts";

/** Rounds as they stand now, the newest day first. */
export function roundList(db: Db): Round[] {
  const latest = new Map(entriesOfKind(db, "round").map(({ body }) => [body.roundId, body]));
  return [...latest.values()].sort((a, b) => (a.on > b.on || (a.on === b.on && a.roundId > b.roundId) ? -1 : 1));
}

export function readRound(db: Db, roundId: string): Round | undefined {
  return entriesOfKind(db, "round").findLast(({ body }) => body.roundId === roundId)?.body;
}

/** What was docked from one gauge, oldest first; without a gauge, what was docked without one. */
export function dockingsOf(db: Db, gaugeId: string | null): Docking[] {
  return entriesOfKind(db, "docking").flatMap(({ body }) => (body.gaugeId === gaugeId ? [body] : []));
}

export function readDocking(db: Db, dockingId: string): Docking | undefined {
  return entriesOfKind(db, "docking").find(({ body }) => body.dockingId === dockingId)?.body;
}

export function dumpFormatList(db: Db): StoredDumpFormat[] {
  const latest = new Map(entriesOfKind(db, "dumpFormat").map(({ body }) => [body.formatId, body]));
  return [...latest.values()];
}
