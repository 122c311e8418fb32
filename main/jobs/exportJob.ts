import { z } from "zod";
import { exportArchive } from "../archive/exportArchive.ts";
import { programVersion } from "../programVersion.ts";
import { defineJob } from "./Job.ts";

/** Writes everything that is filed into one archive in open formats. */
export const job = defineJob({
  args: z.strictObject({ file: z.string().min(1).max(1_000), waveforms: z.boolean().default(true) }),
  run: ({ file, waveforms }, { db, demo, progress, goOn }) =>
    exportArchive(db, { file, waveforms, demo, program: programVersion, nowMs: Date.now(), watch: { progress, goOn } }),
});
