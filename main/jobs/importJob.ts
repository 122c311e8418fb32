import { z } from "zod";
import { importArchive } from "../archive/importArchive.ts";
import { defineJob } from "./Job.ts";

/** Takes the records of an archive over, all or nothing. Accepting waits meanwhile. */
export const job = defineJob({
  files: true,
  args: z.strictObject({ file: z.string().min(1).max(1_000), operatorId: z.uuidv7().optional() }),
  run: ({ file, operatorId }, { openStore, progress, goOn }) =>
    importArchive(openStore(), file, { progress, goOn }, operatorId ?? null),
});
