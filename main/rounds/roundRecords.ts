import type { Docking, Round, StoredDumpFormat } from "../../app/ledger/round.ts";
import { type Db, prepared } from "../store/db.ts";
import { entriesOfKind } from "../store/ledger/readEntry.ts";

/** Rounds as they stand now, the newest day first. */
export function roundList(db: Db): Round[] {
  const latest = new Map(entriesOfKind(db, "round").map(({ body }) => [body.roundId, body]));
  return [...latest.values()].sort((a, b) => (a.on > b.on || (a.on === b.on && a.roundId > b.roundId) ? -1 : 1));
}

export function readRound(db: Db, roundId: string): Round | undefined {
  return entriesOfKind(db, "round").findLast(({ body }) => body.roundId === roundId)?.body;
}

/** The adapter a round takes for a spindle; undefined without a round, or where the spindle is no stop of it. */
export function adapterOfStop(db: Db, roundId: string | undefined, spindleId: string): string | undefined {
  const round = roundId === undefined ? undefined : readRound(db, roundId);
  return round?.stops.find((stop) => stop.spindleId === spindleId)?.adapterId ?? undefined;
}

/** What was docked from one gauge, oldest first; without a gauge, what was docked without one. */
export function dockingsOf(db: Db, gaugeId: string | null): Docking[] {
  return entriesOfKind(db, "docking").flatMap(({ body }) => (body.gaugeId === gaugeId ? [body] : []));
}

/** How many dockings are filed, of whatever gauge. */
export const dockingCount = (db: Db): number =>
  prepared<number>(db, "SELECT count(*) FROM entry WHERE kind = 'docking' AND kind <> 'check'").pluck().get() ?? 0;

/** How many entries came to this file after a place in it. */
export const entriesAfter = (db: Db, place: number): number =>
  prepared<number>(db, "SELECT count(*) FROM entry WHERE n > ?").pluck().get(place) ?? 0;

export function readDocking(db: Db, dockingId: string): Docking | undefined {
  return entriesOfKind(db, "docking").find(({ body }) => body.dockingId === dockingId)?.body;
}

export function readDumpFormat(db: Db, formatId: string): StoredDumpFormat | undefined {
  return entriesOfKind(db, "dumpFormat").findLast(({ body }) => body.formatId === formatId)?.body;
}

export function dumpFormatList(db: Db): StoredDumpFormat[] {
  const latest = new Map(entriesOfKind(db, "dumpFormat").map(({ body }) => [body.formatId, body]));
  return [...latest.values()];
}
