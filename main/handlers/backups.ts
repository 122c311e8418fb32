import { statSync } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { BackupRow } from "../../app/contract/backupViews.ts";
import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { By } from "../people/guarded.ts";
import { readBackupName } from "../store/copies/backupName.ts";
import { forgetRestored, isRestoredName, restoredName } from "../store/copies/restoredFiles.ts";
import { type Db, prepared } from "../store/db.ts";
import type { Context } from "./Context.ts";

type Part = Pick<Handlers, "backup.choose" | "backup.list" | "restore.try" | "restore.swap" | "restore.forget">;

/** Safe copies: where they go, which there are, and the way back. */
export function backupHandlers(context: Context): Part {
  const { store, jobs, backup, series, now } = context;
  const folder = dirname(store.path);

  /** Only what `restore.try` made here can be swapped in or taken away. */
  const ownRestored = (file: string): string => {
    const path = resolve(file);
    if (dirname(path) !== resolve(folder) || !isRestoredName(basename(path)))
      throw new AppError("invalid", "This is no file that was restored here.", { key: "restore.notOurs" });
    return path;
  };

  return {
    "backup.choose": ({ folder: chosen, keep }) => {
      context.backupChoice.save({ folder: chosen ?? undefined, keep });
      backup.tryAgain();
      void backup.tick(); // what comes of it is pushed
      return backup.view;
    },

    "backup.list": async ({ folder: where }) => {
      const own = originsOf(store.db);
      const rows = await rowsIn(where);
      return rows
        .filter((row) => row.demo === store.demo)
        .map(({ demo: _demo, origin, ...row }) => ({ ...row, own: own.some((one) => one.startsWith(origin)) }))
        .toSorted((a, b) => b.atMs - a.atMs);
    },

    "restore.try": ({ file, operatorId }) => {
      forgetRestored(folder);
      const to = join(folder, restoredName(now()));
      return { jobId: jobs.start("restore", { from: file, to, operatorId, atMs: now() }) };
    },

    "restore.swap": ({ file }, by?: By) => {
      const path = ownRestored(file);
      if (statSync(path, { throwIfNoEntry: false }) === undefined)
        throw new AppError("notFound", "What was restored is not there any more. Choose the backup again.", {
          key: "restore.gone",
        });
      if (series.state.cycles.length > 0 || series.state.typed !== undefined)
        throw new AppError("refused", "A series is in work. File it or start over first; then restore.", {
          key: "restore.seriesInWork",
        });
      return context.swap(path, by?.operatorId);
    },

    "restore.forget": ({ file }) => {
      ownRestored(file);
      forgetRestored(folder);
      return { done: true };
    },
  };
}

type Found = Omit<BackupRow, "own"> & { readonly demo: boolean; readonly origin: string };

async function rowsIn(folder: string): Promise<Found[]> {
  const found: Found[] = [];
  for (const name of await namesIn(folder)) {
    const read = readBackupName(name);
    if (read === undefined) continue;
    const file = join(folder, name);
    found.push({ ...read, file, bytes: (await stat(file)).size });
  }
  return found;
}

async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (cause) {
    throw new AppError(
      "notFound",
      `The folder ${folder} cannot be seen. Was the stick taken out, or is the share not connected?`,
      { key: "backup.folderGone", cause },
    );
  }
}

const originsOf = (db: Db) => prepared<string>(db, "SELECT origin FROM origin").pluck().all();
