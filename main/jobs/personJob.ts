import { z } from "zod";
import { exportPerson } from "../archive/exportPerson.ts";
import { defineJob } from "./Job.ts";

/** Writes one person's entries into an archive. */
export const job = defineJob({
  args: z.strictObject({ operatorId: z.uuidv7(), file: z.string().min(1).max(1_000), atMs: z.number() }),
  run: ({ operatorId, file, atMs }, { db, progress, goOn }) =>
    exportPerson(db, { operatorId, file, nowMs: atMs, watch: { progress, goOn } }),
});
