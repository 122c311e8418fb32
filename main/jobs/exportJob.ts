import { z } from "zod";
import { exportArchive } from "../archive/exportArchive.ts";
import { programVersion } from "../programVersion.ts";
import { defineJob } from "./Job.ts";

/** Writes everything that is filed into one archive in open formats. */
export const job = defineJob({
  args: z.strictObject({
    file: z.string().min(1).max(1_000),
    waveforms: z.boolean().default(true),
    salvage: z.boolean().default(false),
  }),
  run: ({ file, waveforms, salvage }, { db, demo, progress, goOn }) =>
    exportArchive(db, {
      file,
      waveforms,
      salvage,
      demo,
      program: programVersion,
      nowMs: Date.now(),
      watch: { progress, goOn },
    }),
});
