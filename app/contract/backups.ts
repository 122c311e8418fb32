import { z } from "zod";
import { id } from "../ledger/fields.ts";
import { type BackupRow, type BackupView, generations, type Swapped } from "./backupViews.ts";
import { method } from "./method.ts";

const path = z.string().trim().min(1).max(1_000);

/** Calls about safe copies: where the daily ones go, and the way back. */
export const backups = {
  /** Where the daily backup goes and which older ones stay; null: none is made. The first is made at once. */
  "backup.choose": method<BackupView>()(z.strictObject({ folder: path.nullable(), keep: generations.optional() })),
  /** The backups in a folder, newest first. */
  "backup.list": method<readonly BackupRow[]>()(z.strictObject({ folder: path })),
  /** Restores a backup to a new place and compares it with the open file. `job.finished` carries a `RestoreTried`. */
  "restore.try": method<{ readonly jobId: string }>()(z.strictObject({ file: path, operatorId: id.optional() })),
  /** Puts the file that `restore.try` made in the place of the data file. The page loads anew. */
  "restore.swap": method<Swapped>()(z.strictObject({ file: path })),
  /** Takes away what `restore.try` made. */
  "restore.forget": method<{ readonly done: true }>()(z.strictObject({ file: path })),
} as const;
