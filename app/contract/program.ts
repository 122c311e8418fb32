import { z } from "zod";
import { method, nothing } from "./method.ts";
import type { JobView, PcSettings, ProgramView, Snapshot } from "./programViews.ts";
import { pcSettings } from "./programViews.ts";

/** Calls about the program itself. */
export const program = {
  "state.snapshot": method<Snapshot>()(nothing),
  "settings.save": method<PcSettings>()(pcSettings.partial()),
  /** Opens the demo works beside the real data, or goes back. The page loads anew. */
  "program.openDemo": method<ProgramView>()(nothing),
  "program.leaveDemo": method<ProgramView>()(nothing),
  "records.verify": method<{ readonly jobId: string }>()(nothing),
  "records.backup": method<{ readonly jobId: string }>()(z.strictObject({ folder: z.string().min(1).max(1_000) })),
  "job.stop": method<JobView>()(z.strictObject({ jobId: z.string().max(64) })),
} as const;
