import { z } from "zod";
import { id, plainDate } from "../ledger/fields.ts";
import { method } from "./method.ts";
import type { MadeFile } from "./roundViews.ts";

const paper = z.enum(["A4", "Letter"]);
const language = z.enum(["en", "de"]);

/** What a report is of. */
export const reportOrder = z.discriminatedUnion("what", [
  z.strictObject({ what: z.literal("check"), checkId: id, paper, language }),
  z.strictObject({ what: z.literal("spindle"), spindleId: id, paper, language }),
  /** @param since  changes are told from this day on; absent: 30 days */
  z.strictObject({ what: z.literal("works"), since: plainDate.optional(), paper, language }),
  z.strictObject({ what: z.literal("round"), roundId: id, paper, language }),
  z.strictObject({ what: z.literal("proof"), proofId: id, paper, language }),
]);
export type ReportOrder = z.infer<typeof reportOrder>;

const path = z.string().trim().min(1).max(1_000);

/** Calls that take records out, bring them back, and prove the program itself; each is a job. */
export const reports = {
  /** `job.finished` carries a `MadeFile`. */
  "reports.make": method<{ readonly jobId: string }>()(reportOrder),
  /** A filed proof for other programs: a table, or quantities with units and uncertainties by D-SI. */
  "proofs.data": method<MadeFile>()(z.strictObject({ proofId: id, as: z.enum(["csv", "json"]) })),
  /** Writes an archive of everything into a folder. `job.finished` carries an `ArchiveMade`. */
  "records.export": method<{ readonly jobId: string }>()(z.strictObject({ folder: path, waveforms: z.boolean() })),
  /** Takes an archive's records over, all or nothing. `job.finished` carries an `ArchiveTaken`. */
  "records.import": method<{ readonly jobId: string }>()(z.strictObject({ file: path, operatorId: id.optional() })),
  /** Runs the published checks on this installation. `job.finished` carries a `ValidationMade`. */
  "program.validate": method<{ readonly jobId: string }>()(z.strictObject({ paper, language })),
} as const;
