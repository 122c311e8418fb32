import { randomUUID } from "node:crypto";
import { JobError } from "../jobs/JobError.ts";
import { type JobArgs, type JobResult, Jobs } from "../jobs/Jobs.ts";
import type { JobName } from "../jobs/registry.ts";
import { type CommandIo, UsageError } from "./Command.ts";

/**
 * Runs one job on a data file for a command: what the job refuses is the user's to put right (exit 2).
 * @throws UsageError  in the job's own words
 * @throws JobError  `damaged` and `internal`, which are not the user's
 */
export async function runJob<N extends JobName>(
  file: { readonly path: string; readonly demo: boolean },
  name: N,
  args: JobArgs<N>,
  io: CommandIo,
): Promise<JobResult<N>> {
  const jobs = new Jobs({ ...file, newId: randomUUID, onChange: () => {} });
  try {
    return await jobs.run(name, args, io.signal);
  } catch (cause) {
    if (cause instanceof JobError && cause.code !== "internal" && cause.code !== "damaged")
      throw new UsageError(cause.code === "stopped" ? "stopped; nothing was changed" : cause.message);
    throw cause;
  } finally {
    await jobs.close();
  }
}
