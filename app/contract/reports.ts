import { z } from "zod";
import { id, plainDate } from "../ledger/fields.ts";
import { method } from "./method.ts";

const paper = z.enum(["A4", "Letter"]);

/** What a report is of. */
export const reportOrder = z.discriminatedUnion("what", [
  z.strictObject({ what: z.literal("check"), checkId: id, paper }),
  z.strictObject({ what: z.literal("spindle"), spindleId: id, paper }),
  /** @param since  changes are told from this day on; absent: 30 days */
  z.strictObject({ what: z.literal("works"), since: plainDate.optional(), paper }),
]);
export type ReportOrder = z.infer<typeof reportOrder>;

const path = z.string().trim().min(1).max(1_000);

/** Calls that take records out, bring them back, and prove the program itself; each is a job. */
export const reports = {
  /** `job.finished` carries a `MadeFile`. */
  "reports.make": method<{ readonly jobId: string }>()(reportOrder),
  /** Writes an archive of everything into a folder. `job.finished` carries an `ArchiveMade`. */
  "records.export": method<{ readonly jobId: string }>()(z.strictObject({ folder: path, waveforms: z.boolean() })),
  /** Takes an archive's records over, all or nothing. `job.finished` carries an `ArchiveTaken`. */
  "records.import": method<{ readonly jobId: string }>()(z.strictObject({ file: path, operatorId: id.optional() })),
  /** Runs the published checks on this installation. `job.finished` carries a `ValidationMade`. */
  "program.validate": method<{ readonly jobId: string }>()(z.strictObject({ paper })),
} as const;
