import { dirname } from "node:path";
import { z } from "zod";
import { supportFiles } from "../support/supportFiles.ts";
import { defineJob } from "./Job.ts";

/** Collects what helps others to help. */
export const job = defineJob({
  args: z.strictObject({ about: z.string().max(20_000), atMs: z.number() }),
  run: ({ about, atMs }, { db, path }) => supportFiles(db, { folder: dirname(path), about, nowMs: atMs }),
});
