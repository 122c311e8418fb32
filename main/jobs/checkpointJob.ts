import { z } from "zod";
import { openBeside } from "../store/open.ts";
import { defineJob } from "./Job.ts";

/** Writes the log back into the data file, beside readers and the writer, which it does not hold up. */
export const job = defineJob({
  args: z.strictObject({}),
  run(_, { path }) {
    const db = openBeside(path);
    try {
      db.pragma("wal_checkpoint(PASSIVE)");
    } finally {
      db.close();
    }
  },
});
