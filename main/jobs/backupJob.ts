import { z } from "zod";
import { generations } from "../../app/contract/backupViews.ts";
import { backup } from "../store/copies/backup.ts";
import { defineJob } from "./Job.ts";

/** Copies the data file into a folder, walks the copy, and removes backups whose generation is over. */
export const job = defineJob({
  args: z.strictObject({
    folder: z.string().min(1).max(1_000),
    /** Which older backups stay; absent: all. A single one made by hand leaves them alone. */
    keep: generations.optional(),
    /** What the time is by the clock of the core; absent: by the machine's. */
    atMs: z.number().optional(),
  }),
  run: ({ folder, keep, atMs }, { db, progress, goOn }) =>
    backup(db, { folder, nowMs: atMs ?? Date.now(), keep, watch: { progress, goOn } }),
});
