import { z } from "zod";
import { restore } from "../store/copies/restore.ts";
import { defineJob } from "./Job.ts";

/** Restores a backup to a new place, compared and ready to be opened or swapped in. */
export const job = defineJob({
  args: z.strictObject({ from: z.string().min(1).max(1_000), to: z.string().min(1).max(1_000) }),
  run: ({ from, to }, { demo, progress, goOn }) =>
    restore({ from, to, demo, now: Date.now, watch: { progress, goOn } }),
});
