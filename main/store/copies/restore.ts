import { existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { basename, dirname } from "node:path";
import { refuseStrangers } from "../fileMark.ts";
import { chainReports, type LedgerReport } from "../ledger/LedgerReport.ts";
import type { Watch } from "../ledger/walkSlices.ts";
import { openReader, openStore } from "../open.ts";
import { StoreError } from "../StoreError.ts";
import { copyDatabase, syncFolder } from "./copyDatabase.ts";
import { inWordsOfCopying } from "./inWordsOfCopying.ts";
import { verifyCopy } from "./verifyCopy.ts";

export type RestoreOptions = {
  /** The backup; only read. */
  readonly from: string;
  /** The new data file; must not exist. */
  readonly to: string;
  readonly demo: boolean;
  readonly now: () => number;
  /** Who restores, for the entry that says so. */
  readonly operatorId?: string | undefined;
  readonly watch: Watch;
};

/**
 * Restores a backup to a new place: copies it, walks the copy and compares its chains with the backup's, begins a
 * chain of its own there, and files the act in it.
 * @returns  the report on the copy as it was in the backup
 * @throws StoreError  `damaged` when the backup does not hold; `newer`, `demoMismatch`, `notFound`, `conflict`, `full`
 */
export async function restore(options: RestoreOptions): Promise<LedgerReport> {
  const { from, to, watch } = options;
  if (!existsSync(from))
    throw new StoreError("notFound", `There is no backup ${from}. Check the name; nothing was made.`);
  if (existsSync(to))
    throw new StoreError("conflict", `${to} is there already. A restore never overwrites: choose a new name.`);
  const part = `${to}.part`;
  try {
    removeAll(part); // left by a restore that was cut off
    const heads = await copyInto(part, options);
    const report = await verifyCopy(part, watch);
    if (report.damagedCount > 0) throw new StoreError("damaged", damagedBackup(from, report));
    if (headsOf(report.chains) !== heads)
      throw new StoreError(
        "damaged",
        `The copy of ${from} is not what the backup holds. Nothing was restored; try again, on another disk if need be.`,
      );
    beginAnew(part, options, report);
    renameSync(part, to);
    syncFolder(dirname(to));
    return report;
  } catch (cause) {
    throw inWordsOfCopying(cause, "restore", dirname(to));
  } finally {
    removeAll(part);
  }
}

/** @returns  the heads the backup has */
async function copyInto(part: string, { from, demo, watch }: RestoreOptions): Promise<string> {
  const source = openReader(from);
  try {
    refuseStrangers(source, from, demo);
    mkdirSync(dirname(part), { recursive: true, mode: 0o700 });
    await copyDatabase(source, part, watch);
    return headsOf(chainReports(source, []));
  } finally {
    source.close();
  }
}

/** From here on the copy is a file of its own: what is filed in it continues no chain of the old one. */
function beginAnew(part: string, { from, demo, now, operatorId }: RestoreOptions, { chains }: LedgerReport): void {
  const store = openStore({ path: part, demo, now, freshOrigin: true });
  try {
    const heads = chains
      .map(({ origin, entries, head }) => `${origin.slice(0, 8)} ${entries} ${head.slice(0, 16)}`)
      .join(", ");
    const detail = `from ${basename(from)}: ${heads}`.slice(0, 500);
    store.append([{ kind: "act", body: { what: "restored", detail, operatorId: operatorId ?? null } }]);
    store.tidy();
    store.db.pragma("journal_mode = DELETE"); // writes the log back, or throws
  } finally {
    store.close();
  }
  // The file gets its name alone: what were still in a log beside it would be lost.
  if (existsSync(`${part}-wal`))
    throw new StoreError("full", `The log of ${part} could not be written back; nothing was restored.`);
}

const headsOf = (chains: LedgerReport["chains"]) => JSON.stringify(chains.map((c) => [c.origin, c.entries, c.head]));

function removeAll(path: string): void {
  for (const rest of ["", "-journal", "-wal", "-shm", ".lock"]) rmSync(`${path}${rest}`, { force: true });
}

const damagedBackup = (from: string, { damagedCount, damaged }: LedgerReport) =>
  `The backup ${from} is damaged in ${damagedCount} places, first: ${damaged[0]?.detail}. Nothing was restored. Try an older backup; holdfast verify --data shows what still stands in this one.`;
