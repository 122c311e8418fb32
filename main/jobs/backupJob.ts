import { z } from "zod";
import { backup } from "../store/copies/backup.ts";
import { usualGenerations } from "../store/copies/expired.ts";
import { defineJob } from "./Job.ts";

/** Copies the data file into a folder, walks the copy, and removes backups whose generation is over. */
export const job = defineJob({
  args: z.strictObject({
    folder: z.string().min(1).max(1_000),
    /** Whether older backups are thinned out; a single one made by hand leaves them alone. */
    thinOut: z.boolean().default(false),
  }),
  run: ({ folder, thinOut }, { db, progress, goOn }) =>
    backup(db, { folder, nowMs: Date.now(), keep: thinOut ? usualGenerations : undefined, watch: { progress, goOn } }),
});
