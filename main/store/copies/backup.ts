import { existsSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Generations } from "../../../app/contract/backupViews.ts";
import { type Db, prepared } from "../db.ts";
import { isDemoFile } from "../fileMark.ts";
import type { Damage } from "../ledger/DamageList.ts";
import type { Watch } from "../ledger/walkSlices.ts";
import { StoreError } from "../StoreError.ts";
import { backupName, readBackupName } from "./backupName.ts";
import { copyDatabase, syncFolder } from "./copyDatabase.ts";
import { expired } from "./expired.ts";
import { folderGone, inWordsOfCopying } from "./inWordsOfCopying.ts";
import { verifyCopy } from "./verifyCopy.ts";

export type BackupMade = {
  readonly file: string;
  readonly bytes: number;
  readonly entries: number;
  /** Older backups that were removed. */
  readonly removed: readonly string[];
  /** What is wrong in the copy, because it is wrong in the data file. */
  readonly damaged: readonly Damage[];
  readonly damagedCount: number;
};

export type BackupOptions = {
  readonly folder: string;
  readonly nowMs: number;
  /** Which older ones stay; absent: all. */
  readonly keep?: Generations | undefined;
  readonly watch: Watch;
};

/**
 * Makes a copy of the whole data file in a folder, opens it and walks it, and only then gives it its name. A copy of
 * damaged records is kept under a name that says so, and no older one is removed for it.
 * @throws StoreError  `notFound` the folder is not there, `full`, `readOnly`, `damaged` the medium failed
 */
export async function backup(db: Db, { folder, nowMs, keep, watch }: BackupOptions): Promise<BackupMade> {
  if (!existsSync(folder)) throw new StoreError("notFound", folderGone(folder));
  const origin = prepared<string>(db, "SELECT origin FROM origin ORDER BY n DESC LIMIT 1").pluck().get() ?? "00000000";
  const name = freeName(folder, backupName({ demo: isDemoFile(db), origin, atMs: nowMs }));
  const part = join(folder, `${name}.part`);
  try {
    rmSync(part, { force: true }); // left by a backup that was cut off
    await copyDatabase(db, part, watch);
    const report = await verifyCopy(part, watch);
    const file = join(folder, report.damagedCount === 0 ? name : name.replace(/\.sqlite$/, ".damaged.sqlite"));
    renameSync(part, file);
    syncFolder(folder);
    const removed = report.damagedCount === 0 && keep !== undefined ? removeOld(folder, name, keep) : [];
    const { entries, damaged, damagedCount } = report;
    return { file, bytes: statSync(file).size, entries, removed, damaged, damagedCount };
  } catch (cause) {
    rmSync(part, { force: true });
    throw inWordsOfCopying(cause, "backup", folder);
  }
}

/** Two backups in one second do not meet. */
function freeName(folder: string, name: string): string {
  if (!existsSync(join(folder, name))) return name;
  throw new StoreError("conflict", `There is already a backup ${name} in ${folder}. Try again in a second.`);
}

function removeOld(folder: string, made: string, keep: Generations): string[] {
  const own = readBackupName(made)!;
  const names = readdirSync(folder).filter((name) => {
    const read = readBackupName(name);
    // What bears a later date was made under another clock. It stays, and the one just made counts as the newest.
    return read !== undefined && read.origin === own.origin && read.demo === own.demo && read.atMs <= own.atMs;
  });
  const old = expired(
    names.map((name) => readBackupName(name)!.atMs),
    keep,
  ).map((i) => names[i]!);
  for (const name of old) rmSync(join(folder, name), { force: true });
  return old;
}
